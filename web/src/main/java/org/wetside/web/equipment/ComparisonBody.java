package org.wetside.web.equipment;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.thermal.ThermometerOffset;

/**
 * A thermometer beside the truth, as it is typed.
 *
 * @param shown what it showed, with its unit, for example {@code 20.4C}
 * @param truth what was true, with its unit
 * @param how in one's own words, for example {@code ice point}
 */
public record ComparisonBody(@Nullable String shown, @Nullable String truth, @Nullable String how) {
  /** What a careful comparison leaves open; editable default, from memory. */
  static final TemperatureDifference USUAL_DOUBT = TemperatureDifference.ofKelvins(0.2);

  /**
   * The offset it means.
   *
   * @param day of the comparison
   * @throws BadValueException when half of it is missing or not a temperature
   */
  public ThermometerOffset offset(LocalDate day) {
    return ThermometerOffset.fromComparison(
        degrees("shown temperature", shown),
        degrees("true temperature", truth),
        USUAL_DOUBT,
        day,
        how == null ? "" : how);
  }

  private static Temperature degrees(String thing, @Nullable String typed) {
    if (typed == null || typed.isBlank()) {
      throw new BadValueException(thing, "", "say what it showed and what was true");
    }
    return Temperature.parse(typed);
  }
}
