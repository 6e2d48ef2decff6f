package org.wetside.web.shelf;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.quantity.Units;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FixingTime;

/**
 * How long to fix next, as the page of a bottle says it.
 *
 * @param time minutes and seconds, for example {@code 1:52}
 * @param at the temperature that is for
 * @param how the steps that led there
 */
public record FixingView(String time, String at, String how) {
  /** The view; empty without a clearing time. */
  static Optional<FixingView> of(JudgedBottle judged, Units units) {
    return judged
        .fixing()
        .flatMap(
            fix ->
                judged
                    .bottle()
                    .state()
                    .clearing()
                    .flatMap(test -> test.what().clearing())
                    .map(
                        clip ->
                            new FixingView(
                                clock(fix.time()), units.words(fix.at()), how(fix, clip, units))));
  }

  private static String how(FixingTime fix, Clearing clip, Units units) {
    return plain(fix.times())
        + " times the last clearing time, "
        + Math.round(clip.seconds())
        + " s at "
        + units.words(clip.temperature())
        + " (CH-S01"
        + (fix.times() > 2 ? ", CH-S31, CH-S38: tabular grain, or TF-3" : ", CH-S07")
        + ")"
        + (fix.colder() > 1
            ? String.format(
                Locale.ROOT, ", × %.2f for the colder bath (rule of thumb, RL29)", fix.colder())
            : "")
        + ".";
  }

  private static String plain(double times) {
    return times == Math.rint(times) ? String.valueOf((long) times) : String.valueOf(times);
  }

  /** Minutes and seconds. */
  static String clock(Duration time) {
    return String.format(Locale.ROOT, "%d:%02d", time.toMinutes(), time.toSecondsPart());
  }
}
