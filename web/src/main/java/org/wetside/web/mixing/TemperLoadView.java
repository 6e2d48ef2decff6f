package org.wetside.web.mixing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.LoadTempered;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.BathsTempering;
import org.wetside.core.thermal.WaterAtHand;

/**
 * All baths of a load brought to their temperatures.
 *
 * @param load its number
 * @param targetC the developer's temperature
 * @param roomC what the room and the bottles are taken to have
 * @param timeConstantMinutes by which moments are forecast; null when it was not measured
 * @param waters at hand, in order of preference
 * @param baths in the order in which they are begun: what takes longest first
 * @param alternative to work at the temperature there is, in one sentence; empty when that is the
 *     one wanted
 * @param alternativeC that temperature; null likewise
 * @param alternativeSeconds the development time there; null when there is no honest one
 * @param cautions at the moment of pouring
 * @param notes what is to be known of it
 */
public record TemperLoadView(
    long load,
    double targetC,
    double roomC,
    @Nullable Double timeConstantMinutes,
    List<WaterLine> waters,
    List<BathTemperView> baths,
    String alternative,
    @Nullable Double alternativeC,
    @Nullable Double alternativeSeconds,
    List<CautionView> cautions,
    List<String> notes) {

  /**
   * A water at hand.
   *
   * @param name as it is called at the sink
   * @param temperatureC what it has
   * @param neededMl for all baths and fills together, the water around bottles included
   */
  public record WaterLine(String name, double temperatureC, double neededMl) {
    static WaterLine of(WaterAtHand water, List<BathTemperView> baths) {
      double needed =
          baths.stream().mapToDouble(bath -> bath.fills() * bath.pouredOf(water.name())).sum();
      return new WaterLine(water.name(), water.temperature().celsius(), needed);
    }
  }

  /** The view of an answer, its sentences in those units. */
  public static TemperLoadView of(LoadTempered answer, Units units) {
    Double tau = answer.timeConstant().map(time -> TimeSpan.toSeconds(time) / 60).orElse(null);
    List<BathTemperView> baths =
        answer.baths().stream().map(bath -> BathTemperView.of(bath, tau, units)).toList();
    return new TemperLoadView(
        answer.load().id(),
        answer.load().recipe().temperature().celsius(),
        answer.room().celsius(),
        tau,
        answer.waters().stream().map(water -> WaterLine.of(water, baths)).toList(),
        baths,
        answer.alternative().map(there -> alternative(there, units)).orElse(""),
        answer.alternative().map(there -> there.temperature().celsius()).orElse(null),
        answer
            .alternative()
            .flatMap(LoadTempered.Alternative::time)
            .map(time -> TimeSpan.toSeconds(time.time()))
            .orElse(null),
        answer.cautions().stream().map(CautionView::of).toList(),
        notes(answer, units));
  }

  private static String alternative(LoadTempered.Alternative there, Units units) {
    String degrees = units.words(there.temperature());
    return "Or work at the temperature there is: without tempering the developer has "
        + degrees
        + there
            .time()
            .map(
                time ->
                    "; there it takes "
                        + TimeWords.clock(time.time())
                        + " ("
                        + time.standing().word()
                        + "). Keep the other baths within 3 K of it.")
            .orElse(", and there is no time to believe: " + there.why());
  }

  private static List<String> notes(LoadTempered answer, Units units) {
    List<String> notes = new ArrayList<>();
    if (!answer.roomSaid()) {
      notes.add(
          "Nobody said what the room has: "
              + units.words(answer.room())
              + " is taken for it and for what stands in bottles.");
    }
    if (answer.timeConstant().isEmpty()) {
      notes.add(
          "How long a bath keeps its temperature is forecast once its time constant was measured"
              + " (two readings of a bath left alone: drift); no table gives it. The order holds"
              + " without it.");
    }
    if (answer.baths().stream().anyMatch(bath -> bath.way() == BathTempered.Way.STAND_IN_WATER)) {
      notes.add(
          "Around a bottle stands "
              + Math.round(BathsTempering.WATER_AROUND)
              + " times its volume of water (from memory); that nothing is lost to the room is a"
              + " first estimate: read the bath itself.");
    }
    return List.copyOf(notes);
  }
}
