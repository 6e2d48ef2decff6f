package org.wetside.web.trial;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.trial.FindTests;
import org.wetside.app.trial.UsualClip;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.trial.ClearingRule;
import org.wetside.core.trial.TrialKind;

/**
 * The tests of a bottle, or of washed film.
 *
 * @param subject letter of the bottle, or film
 * @param guides how its tests are made, the first one in front; none for most baths
 * @param baseline the clearing time in fresh solution; null when none was taken
 * @param open the test that runs; null when none does
 * @param over the last that are over, the newest first
 */
public record TestsView(
    String subject,
    List<GuideView> guides,
    @Nullable BaselineView baseline,
    @Nullable TestView open,
    List<TestView> over) {
  /** The subject of tests of washed film. */
  public static final String FILM = "film";

  /**
   * A clearing time in fresh solution.
   *
   * @param seconds how long the clip took
   * @param film of the clip
   * @param dilution how the fixer was made
   * @param temperatureC of the fixer
   * @param spentSeconds the clearing time from which the fixer is spent
   */
  public record BaselineView(
      double seconds, String film, String dilution, double temperatureC, double spentSeconds) {
    static BaselineView of(Clearing clearing) {
      return new BaselineView(
          clearing.seconds(),
          clearing.film(),
          clearing.dilution(),
          clearing.temperature().celsius(),
          TimeSpan.toSeconds(ClearingRule.spentAt(clearing)));
    }
  }

  /** The view of what was found. */
  public static TestsView of(FindTests.Found found, Units units) {
    Optional<Bottle> bottle = found.bottle();
    List<TrialKind> kinds =
        bottle.map(known -> TrialKind.of(known.label().bath())).orElse(List.of(TrialKind.RESIDUE));
    return new TestsView(
        bottle.map(known -> known.label().letter()).orElse(FILM),
        kinds.stream().map(kind -> GuideView.of(kind, bottle)).toList(),
        bottle.flatMap(UsualClip::baseline).map(BaselineView::of).orElse(null),
        found.open().map(open -> TestView.of(open, units)).orElse(null),
        found.over().stream().map(over -> TestView.of(over, units)).toList());
  }
}
