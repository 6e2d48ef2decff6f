package org.wetside.web.wash;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.wash.ForeseeWash;
import org.wetside.app.wash.WashAnswer;
import org.wetside.app.wash.WashWish;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.Typed;

/**
 * A question about a wash as it was typed; null or blank is not said.
 *
 * @param method {@code fills}, {@code running} or a way on file, for example {@code changes-10}
 * @param volume water that fills the tank once, for example {@code 500mL}
 * @param fills how many fills, for {@code fills}
 * @param dwell how long each fill stays, for example {@code 2min}; without it only the rule of
 *     fills is given
 * @param flow of running water, for example {@code 1L/min}
 * @param minutes of running water, for example {@code 20} or {@code 20min}
 * @param start strength of thiosulfate in the fixer, for example {@code 60g/L}
 * @param carryOver what comes along with the film, for example {@code 10mL}
 * @param rolls of film in the tank; 1 when it is not said
 * @param temp temperature of the wash water; 20 °C when it is not said
 */
public record WashQuery(
    @Nullable String method,
    @Nullable String volume,
    @Nullable String fills,
    @Nullable String dwell,
    @Nullable String flow,
    @Nullable String minutes,
    @Nullable String start,
    @Nullable String carryOver,
    @Nullable String rolls,
    @Nullable String temp) {
  /** Fills of one's own. */
  public static final String FILLS = "fills";

  /** Running water of one's own. */
  public static final String RUNNING = "running";

  /**
   * The wash foreseen; the way with little water when no method was said.
   *
   * @throws BadValueException when something typed is not understood or impossible
   */
  public WashAnswer answer() {
    WashWish wish = wish();
    String way = Typed.maybe(method).orElse(ForeseeWash.LOW_WATER);
    ForeseeWash foresee = new ForeseeWash();
    if (way.equalsIgnoreCase(FILLS)) {
      refuse(flow, "flow of water", "fills stand; for running water say method running");
      refuse(minutes, "time of the wash", "say how long one fill stays: dwell");
      return foresee.fills(
          wish,
          count(Typed.required("fills", fills, "6")),
          Typed.maybe(dwell).map(text -> TimeSpan.parse("time in one fill", text)));
    }
    refuse(fills, "fills", "only method fills has them");
    refuse(dwell, "time in one fill", "only method fills has it");
    if (way.equalsIgnoreCase(RUNNING)) {
      return foresee.running(
          wish,
          FlowRate.parse(Typed.required("flow of water", flow, "1L/min")),
          time(Typed.required("time of the wash", minutes, "20min")));
    }
    refuse(minutes, "time of the wash", "only method running has it");
    return foresee.method(wish, way, Typed.maybe(flow).map(FlowRate::parse));
  }

  /** What all ways to wash need to be said. */
  public WashWish wish() {
    return new WashWish(
        Volume.parse(Typed.required("volume of one fill", volume, "500mL")),
        Typed.maybe(rolls).map(WashQuery::film).orElse(UnitOfUse.ONE_ROLL),
        Typed.maybe(start).map(Concentration::parse),
        Typed.maybe(carryOver).map(Volume::parse),
        Typed.maybe(temp).map(Temperature::parse).orElse(WashWish.ORDINARY));
  }

  /** Film as a count of rolls. */
  static UnitOfUse film(String text) {
    double rolls = Typed.number("rolls", text, "2 or 0.75");
    if (!(rolls > 0 && rolls <= 100)) {
      throw new BadValueException("rolls", text, "above 0, to 100 rolls");
    }
    return UnitOfUse.ofRolls(rolls);
  }

  /** A whole number of fills. */
  static int count(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException("fills", text, "a whole number, for example 6");
    }
  }

  /** Minutes as a bare number, or a time with its unit. */
  static Duration time(String text) {
    String bare = text.strip();
    return TimeSpan.parse(
        "time of the wash", bare.matches("-?\\d+(\\.\\d+)?") ? bare + "min" : bare);
  }

  private static void refuse(@Nullable String said, String thing, String why) {
    Optional<String> text = Typed.maybe(said);
    if (text.isPresent()) {
      throw new BadValueException(thing, text.get(), why);
    }
  }
}
