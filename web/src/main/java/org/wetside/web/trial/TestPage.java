package org.wetside.web.trial;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.trial.TrialKind;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of a test that is to be made, or that is over.
 *
 * @param sheet the sheet
 * @param title what is tested, in words: {@code bottle F, rapid fixer}
 * @param hatch hatch of its bath; empty for film
 * @param tests everything about its tests
 * @param guide the one that is shown; empty when there is no test of that bath
 * @param result the test that has just ended
 * @param form what was typed
 */
public record TestPage(
    Sheet sheet,
    String title,
    String hatch,
    TestsView tests,
    Optional<GuideView> guide,
    Optional<TestView> result,
    FilledForm form) {
  /** Where its forms go. */
  public String path() {
    return "/bench/test/" + tests.subject();
  }

  /** How long to fix by the test that has just ended; empty where nothing is said. */
  public List<TestView.FixView> fix() {
    return result.map(TestView::fixing).orElse(List.of());
  }

  /** Whether it is of washed film. */
  public boolean ofFilm() {
    return tests.subject().equals(TestsView.FILM);
  }

  /** Whether the test shown asks for a clip. */
  public boolean asksClip() {
    return guide.filter(shown -> shown.kind().equals(TrialKind.CLEARING.word())).isPresent();
  }

  /** The key that starts the clock. */
  public String startKey() {
    return switch (TrialKind.parse(guide.orElseThrow().kind())) {
      case CLEARING -> "The clip is in";
      case LEADER -> "The leader is in";
      case IODIDE -> "The iodide is in";
      case RESIDUE -> "The drop is on";
    };
  }

  /** A time of seconds as people read it. */
  public static String clock(double seconds) {
    return TestWords.clock(Duration.ofMillis(Math.round(seconds * 1000)));
  }
}
