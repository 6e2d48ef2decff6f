package org.wetside.web.curves;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FindContrastTime;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastTime;

/**
 * The time for a wanted contrast, as {@code POST /api/contrast} answers and {@code wetside contrast
 * --json} prints.
 *
 * @param aim contrast wanted
 * @param minutes the time
 * @param minutesBand 90 %, low and high; null at an end that is open
 * @param missedBelow share of the draws whose series begins above the aim
 * @param missedAbove share of the draws whose series ends below it
 * @param fit the exponential through the points; null when refused
 * @param fitRefused why there is none; null when there is one
 * @param moved points levelled out because contrast fell
 * @param standing of the time
 * @param seed of the draws behind the band
 */
public record ContrastView(
    double aim,
    double minutes,
    List<@Nullable Double> minutesBand,
    double missedBelow,
    double missedAbove,
    @Nullable FitView fit,
    @Nullable String fitRefused,
    List<MovedPointView> moved,
    String standing,
    long seed) {

  /** The view of an answer. */
  public static ContrastView of(FindContrastTime.Answer answer) {
    ContrastTime time = answer.time();
    ContrastDescription description = answer.description();
    return new ContrastView(
        answer.aim().value(),
        time.seconds() / 60,
        Arrays.asList(minutes(time.lowSeconds()), minutes(time.highSeconds())),
        time.missedBelow(),
        time.missedAbove(),
        description instanceof ContrastDescription.Described fit ? FitView.of(fit) : null,
        description instanceof ContrastDescription.Refused refused ? refused.reason() : null,
        answer.moved().stream().map(MovedPointView::of).toList(),
        "measured",
        FindContrastTime.SEED);
  }

  private static @Nullable Double minutes(OptionalDouble seconds) {
    return seconds.isPresent() ? seconds.getAsDouble() / 60 : null;
  }
}
