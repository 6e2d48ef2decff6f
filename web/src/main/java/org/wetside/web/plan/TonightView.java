package org.wetside.web.plan;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.plan.Tonight;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * What there is tonight; null where it was not said.
 *
 * @param kitchenC the room
 * @param tapC the coldest water there is
 * @param kettleC the hottest water there is
 * @param limit clock time by which the last film has to hang, such as {@code 22:00}
 */
public record TonightView(
    @Nullable Double kitchenC,
    @Nullable Double tapC,
    @Nullable Double kettleC,
    @Nullable String limit) {

  static TonightView of(Tonight tonight) {
    return new TonightView(
        tonight.kitchen().map(Temperature::celsius).orElse(null),
        tonight.tap().map(Temperature::celsius).orElse(null),
        tonight.kettle().map(Temperature::celsius).orElse(null),
        tonight.limit().map(LocalTime::toString).orElse(null));
  }

  Tonight tonight() {
    return new Tonight(degrees(kitchenC), degrees(tapC), degrees(kettleC), clock());
  }

  private Optional<LocalTime> clock() {
    try {
      return Optional.ofNullable(limit).map(LocalTime::parse);
    } catch (DateTimeException unreadable) {
      throw new BadValueException(
          "limit", String.valueOf(limit), "write the clock time, for example 22:00");
    }
  }

  private static Optional<Temperature> degrees(@Nullable Double celsius) {
    return Optional.ofNullable(celsius).map(Temperature::ofCelsius);
  }
}
