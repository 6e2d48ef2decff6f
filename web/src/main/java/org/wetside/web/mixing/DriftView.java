package org.wetside.web.mixing;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.DriftFit;
import org.wetside.core.thermal.TimeInBand;

/**
 * Where a bath is going.
 *
 * @param timeConstantSeconds τ
 * @param roomC surroundings, given or found
 * @param roomFound whether they were found from the readings
 * @param startC at the moment the readings count from
 * @param residualK root mean square of what the drift leaves of the readings
 * @param inBandFromSeconds when the bath enters the band; null when not asked, or never
 * @param inBandUntilSeconds when it leaves; null when not asked, never in it, or it stays
 * @param inBand the answer about the band in words; null when not asked
 * @param meanC mean over the stretch; null when not asked
 * @param aheadC temperature at the moment asked; null when not asked
 * @param standing of all of it
 */
public record DriftView(
    double timeConstantSeconds,
    double roomC,
    boolean roomFound,
    double startC,
    double residualK,
    @Nullable Double inBandFromSeconds,
    @Nullable Double inBandUntilSeconds,
    @Nullable String inBand,
    @Nullable Double meanC,
    @Nullable Double aheadC,
    String standing) {

  /** The view of an answer. */
  public static DriftView of(PredictDrift.Answer answer) {
    DriftFit.Found fit = answer.fit();
    Optional<TimeInBand.Inside> inside =
        answer
            .inBand()
            .filter(TimeInBand.Inside.class::isInstance)
            .map(TimeInBand.Inside.class::cast);
    return new DriftView(
        TimeSpan.toSeconds(fit.drift().timeConstant()),
        fit.drift().surroundings().celsius(),
        fit.roomFitted(),
        fit.start().celsius(),
        fit.residual().kelvins(),
        inside.map(stay -> TimeSpan.toSeconds(stay.from())).orElse(null),
        inside.flatMap(TimeInBand.Inside::until).map(TimeSpan::toSeconds).orElse(null),
        answer.inBand().map(DriftView::words).orElse(null),
        answer.mean().map(Temperature::celsius).orElse(null),
        answer.ahead().map(Temperature::celsius).orElse(null),
        "computed");
  }

  private static String words(TimeInBand answer) {
    if (answer instanceof TimeInBand.Never never) {
      return "never in the band; nearest " + Units.METRIC.words(never.nearest());
    }
    TimeInBand.Inside inside = (TimeInBand.Inside) answer;
    String from =
        inside.from().isZero() ? "in the band now" : "in the band from " + clock(inside.from());
    return inside
        .until()
        .map(until -> from + " until " + clock(until))
        .orElse(from + ", and stays");
  }

  /** Minutes and seconds, for example {@code 10:56}. */
  public static String clock(Duration duration) {
    long seconds = Math.round(TimeSpan.toSeconds(duration));
    return String.format("%d:%02d", seconds / 60, seconds % 60);
  }
}
