package org.wetside.web.mixing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.BathWanted;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TimeInBand;

/**
 * How one bath of a load comes to its temperature.
 *
 * @param name of the bath, with its bottle
 * @param fills how often the tank is filled with it
 * @param volumeMl of one fill
 * @param targetC wanted
 * @param lowC it may have
 * @param highC it may have
 * @param way {@code stand in water}, {@code mix} or {@code as it comes}
 * @param pour waters for one fill, or for the water its bottle stands in, coldest first
 * @param stockMl concentrate or stock counted into the fill
 * @param waterMl all water for it
 * @param waterC what that water has together; null when there is nothing to pour
 * @param reached whether the waters at hand give it
 * @param nearestC the temperature that comes nearest; null when it is reached
 * @param asItComesC what it has when nothing is tempered
 * @param pouredAfterSeconds how long after the first pour of the run
 * @param keepsMinutes how long it stays in its band; null while the time constant was not measured,
 *     and where it stays for good
 * @param atPourC what it has when it is poured, made before the first pour; null likewise
 * @param byItselfMinutes when it would come into its band by itself; null when it never does, and
 *     while the time constant was not measured
 * @param text what to do, in one sentence
 * @param forecast what the drift does to it, in words; empty while the time constant was not
 *     measured
 */
public record BathTemperView(
    String name,
    int fills,
    double volumeMl,
    double targetC,
    double lowC,
    double highC,
    String way,
    List<TemperView.PourView> pour,
    double stockMl,
    double waterMl,
    @Nullable Double waterC,
    boolean reached,
    @Nullable Double nearestC,
    double asItComesC,
    double pouredAfterSeconds,
    @Nullable Double keepsMinutes,
    @Nullable Double atPourC,
    @Nullable Double byItselfMinutes,
    String text,
    String forecast) {

  /** How much of the water of that name one fill of it takes, in millilitres. */
  double pouredOf(String water) {
    return pour.stream()
        .filter(part -> part.name().equals(water))
        .mapToDouble(TemperView.PourView::volumeMl)
        .sum();
  }

  /** The view of one bath, its sentences in those units. */
  static BathTemperView of(BathTempered one, @Nullable Double timeConstantMinutes, Units units) {
    BathWanted bath = one.bath();
    BathTemperWords words = new BathTemperWords(one, units);
    boolean keeps = timeConstantMinutes != null && Double.isFinite(one.keeps());
    double keepsMinutes =
        timeConstantMinutes != null && keeps
            ? one.keeps() * timeConstantMinutes
            : Double.POSITIVE_INFINITY;
    return new BathTemperView(
        bath.name(),
        bath.fills(),
        bath.volume().millilitres(),
        bath.target().celsius(),
        bath.band().low().celsius(),
        bath.band().high().celsius(),
        BathTemperWords.way(one.way()),
        words.pours().stream().map(TemperView.PourView::of).toList(),
        bath.made() instanceof BathWanted.FromWater water ? water.concentrate().millilitres() : 0,
        one.water().millilitres(),
        words.pours().isEmpty() ? null : one.waters().waterTemperature().celsius(),
        one.waters() instanceof Tempering.Reached,
        one.waters() instanceof Tempering.CannotBeReached none ? none.nearest().celsius() : null,
        one.asItComes().celsius(),
        TimeSpan.toSeconds(bath.pouredAfter()),
        keeps ? keepsMinutes : null,
        one.atPour().map(Temperature::celsius).orElse(null),
        one.byItself()
            .filter(TimeInBand.Inside.class::isInstance)
            .map(TimeInBand.Inside.class::cast)
            .map(inside -> TimeSpan.toSeconds(inside.from()) / 60)
            .orElse(null),
        words.todo(),
        words.forecast(keepsMinutes));
  }
}
