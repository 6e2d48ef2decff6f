package org.wetside.web.mixing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.TemperWish;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.thermal.WaterAtHand;

/**
 * What there is to temper the baths of a load with, as it was typed; null or blank is not said.
 *
 * @param cold the cold water, for example {@code 9C}; without any, those said tonight and those of
 *     the house are taken
 * @param hot the hot water, for example {@code 50C}
 * @param ice a third water, used when the others do not reach, for example {@code 4C}
 * @param room what the room and the bottles have, for example {@code 17C}; the kitchen of tonight
 *     when it is not said
 * @param tau time constant of a bath of that size in the room, as measured, for example {@code
 *     60min}
 */
public record TemperLoadQuery(
    @Nullable String cold,
    @Nullable String hot,
    @Nullable String ice,
    @Nullable String room,
    @Nullable String tau) {

  /**
   * Understood.
   *
   * @throws BadValueException when something typed is not understood
   */
  public TemperWish wish() {
    List<WaterAtHand> waters = new ArrayList<>();
    add(waters, "cold", cold);
    add(waters, "hot", hot);
    add(waters, "ice", ice);
    return new TemperWish(
        waters,
        Typed.maybe(room).map(text -> room(Temperature.parse(text))),
        Typed.maybe(tau).map(text -> TimeSpan.parse("time constant of the drift", text)));
  }

  private static void add(List<WaterAtHand> waters, String name, @Nullable String text) {
    Typed.maybe(text)
        .ifPresent(
            typed -> waters.add(new WaterAtHand(name, water(name, Temperature.parse(typed)))));
  }

  /** Liquid water. */
  static Temperature water(String name, Temperature has) {
    if (has.celsius() < 0 || has.celsius() > 100) {
      throw new BadValueException(name + " water", has.toString(), "between 0 and 100 °C");
    }
    return has;
  }

  /** A room somebody works in. */
  static Temperature room(Temperature has) {
    if (has.celsius() < 0 || has.celsius() > 50) {
      throw new BadValueException("room", has.toString(), "between 0 and 50 °C");
    }
    return has;
  }
}
