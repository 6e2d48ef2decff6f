package org.wetside.web.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.plan.PlanWords;
import org.wetside.app.plan.PreparedLoad;
import org.wetside.app.times.TimeWords;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Sharing;
import org.wetside.core.quantity.Units;
import org.wetside.core.source.Standing;
import org.wetside.web.process.OrderWarningView;

/**
 * What a wish comes to, in words.
 *
 * @param time the common time; empty when there is none
 * @param standing how it is known
 * @param source where it is from
 * @param band nine in ten; empty when not known
 * @param length from the first pour to hanging; empty without a time
 * @param fill liquid in the tank
 * @param mix concentrate and water; empty when the parts are not known
 * @param stock whether there is enough developer; empty when the parts are not known
 * @param rolls each roll with its own time
 * @param inTheWay what stands in the way
 * @param warnings baths that should not follow one another as they are
 */
public record PreparedPart(
    String time,
    @Nullable Standing standing,
    String source,
    String band,
    String length,
    String fill,
    String mix,
    @Nullable StockPart stock,
    List<RollLine> rolls,
    List<String> inTheWay,
    List<OrderWarningView> warnings) {

  /** A roll with the time it wants for itself, and what sharing costs it. */
  public record RollLine(
      String number,
      String film,
      String time,
      @Nullable Standing standing,
      String source,
      String cost,
      String aboutIndex) {}

  static PreparedPart of(PreparedLoad load, Units units) {
    return new PreparedPart(
        load.time().map(time -> TimeWords.clock(time.time())).orElse(""),
        load.time().map(ChosenTime::standing).orElse(null),
        load.time().map(ChosenTime::source).orElse(""),
        load.time()
            .flatMap(ChosenTime::band)
            .map(band -> TimeWords.clock(band.low()) + " to " + TimeWords.clock(band.high()))
            .orElse(""),
        load.length().map(TimeWords::clock).orElse(""),
        units.words(load.fill()),
        load.mix()
            .map(
                mix ->
                    units.words(mix.concentrate())
                        + " of concentrate or stock and "
                        + units.words(mix.water())
                        + " of water")
            .orElse(""),
        load.stock().map(check -> StockPart.of(check, units)).orElse(null),
        rolls(load),
        load.inTheWay(),
        load.warnings().stream().map(OrderWarningView::of).toList());
  }

  private static List<RollLine> rolls(PreparedLoad load) {
    List<RollLine> lines = new ArrayList<>();
    for (PreparedLoad.TimedRoll timed : load.rolls()) {
      lines.add(
          new RollLine(
              timed.roll().number(),
              timed.roll().filmAndIndex(),
              timed.time().map(time -> TimeWords.clock(time.time())).orElse("none"),
              timed.time().map(ChosenTime::standing).orElse(null),
              timed.time().map(ChosenTime::source).orElse(timed.why()),
              cost(load, timed.roll().number()),
              timed.aboutIndex()));
    }
    return lines;
  }

  private static String cost(PreparedLoad load, String number) {
    if (load.sharing() instanceof Sharing.Together together && load.rolls().size() > 1) {
      for (Sharing.Deviation deviation : together.deviations()) {
        if (deviation.number().equals(number) && Math.abs(deviation.timeError()) >= 0.005) {
          return PlanWords.of(deviation);
        }
      }
    }
    return "";
  }
}
