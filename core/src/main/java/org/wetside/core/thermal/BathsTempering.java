package org.wetside.core.thermal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;

/**
 * All baths of an evening's load brought to their temperatures from the waters at hand, in the
 * order in which they are begun: what stands in water takes longest and comes first; then what
 * keeps its temperature longest, so that what drifts out soonest is made last.
 *
 * <p>A bottle in water is reckoned to the temperature where both meet, with nothing lost to the
 * room: a first estimate, after which the bath itself is read.
 *
 * @param waters at hand, in order of preference; at least one
 * @param room surroundings of the baths
 * @param timeConstant of a bath of that size standing in the room, as measured; empty when nobody
 *     has: then no moment is forecast, because no table gives it
 */
public record BathsTempering(
    List<WaterAtHand> waters, Temperature room, Optional<Duration> timeConstant) {
  /** So much water around a bottle for each part in it (from memory). */
  public static final double WATER_AROUND = 2;

  public BathsTempering {
    waters = List.copyOf(waters);
    if (waters.isEmpty()) {
      throw new BadValueException(
          "waters at hand", "none", "say at least one, for example cold 15C");
    }
    if (timeConstant.filter(time -> time.isZero() || time.isNegative()).isPresent()) {
      throw new BadValueException(
          "time constant of the drift", timeConstant.get().toSeconds() + " s", "above 0 s");
    }
  }

  /** Every bath, in the order in which it is begun. */
  public List<BathTempered> of(List<BathWanted> baths) {
    List<BathTempered> tempered = new ArrayList<>();
    baths.forEach(bath -> tempered.add(tempered(bath)));
    tempered.sort(
        Comparator.comparing(BathTempered::way)
            .thenComparing(Comparator.comparingDouble(BathsTempering::first).reversed()));
    return tempered;
  }

  /** Larger is begun earlier: heat to be moved for a bottle, keeping for a mixture. */
  private static double first(BathTempered one) {
    return one.way() == BathTempered.Way.STAND_IN_WATER
        ? one.bath().target().minus(one.asItComes()).abs().kelvins()
            * one.bath().volume().millilitres()
        : one.keeps();
  }

  private BathTempered tempered(BathWanted bath) {
    return bath.made() instanceof BathWanted.FromWater water
        ? mixed(bath, water)
        : standing(bath, ((BathWanted.InBottle) bath.made()).has());
  }

  private BathTempered mixed(BathWanted bath, BathWanted.FromWater made) {
    List<Liquid> counted =
        made.concentrate().millilitres() > 0
            ? List.of(new Liquid("stock", made.concentrate(), made.has()))
            : List.of();
    TemperingQuestion question =
        new TemperingQuestion(bath.target(), bath.volume(), counted, waters, Optional.empty());
    Temperature comes = question.asItComes();
    boolean fits = bath.band().contains(comes);
    TemperingQuestion asked =
        fits
            ? new TemperingQuestion(
                comes, bath.volume(), counted, waters.subList(0, 1), Optional.empty())
            : question;
    return tempered(
        bath,
        fits ? BathTempered.Way.AS_IT_COMES : BathTempered.Way.MIX,
        asked.answer(),
        bath.volume().minus(made.concentrate()),
        comes);
  }

  private BathTempered standing(BathWanted bath, Temperature has) {
    Volume around = bath.volume().times(WATER_AROUND);
    double wanted = bath.target().celsius() + bath.target().minus(has).kelvins() / WATER_AROUND;
    Temperature water = Temperature.ofCelsius(Math.min(100, Math.max(0, wanted)));
    boolean fits = bath.band().contains(has);
    Tempering tempering = TemperingQuestion.ofWater(water, around, waters).answer();
    return tempered(
        bath,
        fits ? BathTempered.Way.AS_IT_COMES : BathTempered.Way.STAND_IN_WATER,
        fits ? new Tempering.Reached(List.of(), has, bath.volume()) : tempering,
        fits ? Volume.ZERO : around,
        has);
  }

  private BathTempered tempered(
      BathWanted bath, BathTempered.Way way, Tempering waters, Volume water, Temperature comes) {
    Optional<Drift> drift = timeConstant.map(time -> new Drift(room, time));
    Temperature start = way == BathTempered.Way.AS_IT_COMES ? comes : bath.target();
    return new BathTempered(
        bath,
        way,
        waters,
        water,
        comes,
        keeps(bath, start),
        drift.map(known -> known.after(start, bath.pouredAfter())),
        drift.map(known -> known.timeIn(bath.band(), comes)));
  }

  /** In time constants: the drift of one of unit length. */
  private double keeps(BathWanted bath, Temperature start) {
    TimeInBand stays = new Drift(room, Duration.ofSeconds(1)).timeIn(bath.band(), start);
    return stays instanceof TimeInBand.Inside inside
        ? inside.until().map(TimeSpan::toSeconds).orElse(Double.POSITIVE_INFINITY)
        : 0;
  }
}
