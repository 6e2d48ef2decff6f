package org.wetside.store;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * The stored form of a value: text, numbers, yes/no as 1/0, moments as ISO-8601 text in UTC with
 * three decimals (so that text order is time order), days as ISO-8601, durations in ms, °C, mL, g.
 */
final class Stored {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  private Stored() {}

  static @Nullable Object form(Object value) {
    if (value instanceof Optional<?> maybe) {
      return maybe.isPresent() ? form(maybe.get()) : null;
    }
    if (value instanceof OptionalDouble maybe) {
      return maybe.isPresent() ? maybe.getAsDouble() : null;
    }
    if (value instanceof String || value instanceof Number) {
      return value;
    }
    if (value instanceof Boolean yes) {
      return yes ? 1 : 0;
    }
    if (value instanceof Instant moment) {
      return MOMENT.format(moment);
    }
    if (value instanceof LocalDate day) {
      return day.toString();
    }
    if (value instanceof Duration duration) {
      return duration.toMillis();
    }
    if (value instanceof Temperature temperature) {
      return temperature.celsius();
    }
    if (value instanceof Volume volume) {
      return volume.millilitres();
    }
    if (value instanceof Mass mass) {
      return mass.grams();
    }
    if (value instanceof ExposureIndex index) {
      return index.isoArithmetic();
    }
    throw new IllegalArgumentException("no stored form for a " + value.getClass().getName());
  }
}
