package org.wetside.web.mixing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.core.thermal.Vessel;
import org.wetside.core.thermal.WaterAtHand;

/**
 * A question about tempering as it was typed; null or blank is not said.
 *
 * @param to temperature wanted, for example {@code 20C}
 * @param total volume wanted, for example {@code 1000mL}
 * @param cold the cold water, for example {@code 15C}
 * @param hot the hot water, for example {@code 50C}
 * @param ice a third water, used only when the others do not reach, for example {@code 4C}
 * @param stock stock or concentrate counted into the total, for example {@code 300mL@18C}
 * @param vessel heat of the vessel counted in, for example {@code 150J/K@15C}
 */
public record TemperQuery(
    @Nullable String to,
    @Nullable String total,
    @Nullable String cold,
    @Nullable String hot,
    @Nullable String ice,
    @Nullable String stock,
    @Nullable String vessel) {

  /**
   * The question in the types of the trade.
   *
   * @throws org.wetside.core.quantity.BadValueException when something typed is not understood
   */
  public TemperingQuestion question() {
    List<WaterAtHand> waters = new ArrayList<>();
    addWater(waters, "cold", cold);
    addWater(waters, "hot", hot);
    addWater(waters, "ice", ice);
    return new TemperingQuestion(
        Temperature.parse(Typed.required("temperature wanted", to, "20C")),
        Volume.parse(Typed.required("volume wanted", total, "1000mL")),
        Typed.maybe(stock).map(text -> List.of(Liquid.parse("stock", text))).orElse(List.of()),
        waters,
        Typed.maybe(vessel).map(Vessel::parse));
  }

  private static void addWater(List<WaterAtHand> waters, String name, @Nullable String text) {
    Typed.maybe(text)
        .ifPresent(degrees -> waters.add(new WaterAtHand(name, Temperature.parse(degrees))));
  }
}
