package org.wetside.web.trial;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.trial.TrialKind;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the sheet of a test that runs.
 *
 * @param sheet the sheet
 * @param title what is tested
 * @param hatch hatch of its bath; empty for film
 * @param test the test
 * @param started by the reader's clock
 * @param markSeconds the moment that matters, from the start: spent from then, or left until then;
 *     null where there is none
 * @param mark the same in words; empty where there is none
 * @param judge how it is judged
 * @param form what was typed
 */
public record RunningPage(
    Sheet sheet,
    String title,
    String hatch,
    TestView test,
    String started,
    @Nullable Double markSeconds,
    String mark,
    List<GuideStepView> judge,
    FilledForm form) {
  /** Where its form goes. */
  public String path() {
    return "/bench/test/" + Optional.ofNullable(test.bottle()).orElse(TestsView.FILM);
  }

  /** What is looked for. */
  public String question() {
    return switch (kind()) {
      case CLEARING -> "Is it clear?";
      case LEADER -> "Is it black?";
      case IODIDE -> "Does any stay?";
      case RESIDUE -> "A stain?";
    };
  }

  /** The key for what a good bath shows. */
  public String goodKey() {
    return switch (kind()) {
      case CLEARING -> "It is clear";
      case LEADER -> "It is black";
      case IODIDE -> "Nothing stays";
      case RESIDUE -> "No stain";
    };
  }

  /** The key for what a spent bath shows. */
  public String badKey() {
    return switch (kind()) {
      case CLEARING -> "Not clear, I stop";
      case LEADER -> "Grey or pale";
      case IODIDE -> "It stays cloudy";
      case RESIDUE -> "Yellow or brown";
    };
  }

  private TrialKind kind() {
    return TrialKind.parse(test.kind());
  }
}
