package org.wetside.web.strip;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.core.sensitometry.ContrastTime;
import org.wetside.core.sensitometry.SpeedStep;
import org.wetside.core.sensitometry.TimeForN;

/**
 * The development for one contrast of subject.
 *
 * @param n stops that the subject is short of (above 0) or beyond (below 0) a normal one
 * @param contrast that it wants
 * @param minutes development time; null when the curves do not reach it
 * @param minutesBand 90 %, low and high; null without a time, and at an end that is open
 * @param exposureIndex standard index nearest to the speed at that time; null when no speed is
 *     known
 */
public record NView(
    int n,
    double contrast,
    @Nullable Double minutes,
    @Nullable List<@Nullable Double> minutesBand,
    @Nullable Double exposureIndex) {
  static NView of(TimeForN one, FamilyAnswer family) {
    ContrastTime time = one.time().orElse(null);
    return new NView(
        one.n(),
        one.gradient(),
        time == null ? null : Digits.minutes(time.seconds()),
        time == null
            ? null
            : Arrays.asList(minutes(time.lowSeconds()), minutes(time.highSeconds())),
        time == null ? null : family.settingAt(time.seconds()).map(SpeedStep::iso).orElse(null));
  }

  private static @Nullable Double minutes(OptionalDouble seconds) {
    return seconds.isPresent() ? Digits.minutes(seconds.getAsDouble()) : null;
  }
}
