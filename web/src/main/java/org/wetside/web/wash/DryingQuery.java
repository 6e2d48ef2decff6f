package org.wetside.web.wash;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.Typed;

/**
 * A question about drying as it was typed; null or blank is not said.
 *
 * @param volume of the bath of wetting agent, for example {@code 500mL}
 * @param agent its dilution as its bottle says, for example {@code 1+200}
 * @param hung when the film is hung up, for example {@code 21:40}
 */
public record DryingQuery(@Nullable String volume, @Nullable String agent, @Nullable String hung) {

  /** The bath's volume. */
  public Volume fill() {
    return Volume.parse(Typed.required("volume of the bath", volume, "500mL"));
  }

  /** The dilution that was said. */
  public Optional<DilutionRatio> dilution() {
    return Typed.maybe(agent).map(DilutionRatio::parse);
  }

  /** When the film is hung up, if it was said. */
  public Optional<LocalTime> hungAt() {
    return Typed.maybe(hung).map(DryingQuery::time);
  }

  /** A time of day. */
  static LocalTime time(String text) {
    try {
      return LocalTime.parse(text.strip().length() == 4 ? "0" + text.strip() : text.strip());
    } catch (DateTimeParseException notOne) {
      throw new BadValueException(
          "time the film is hung", text, "hours and minutes, for example 21:40");
    }
  }
}
