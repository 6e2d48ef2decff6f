package org.wetside.web.density;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.Calibrate;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.quantity.BadValueException;

/**
 * A calibration as it was made.
 *
 * @param tablet name of the step tablet
 * @param on day, for example 2026-01-10; today when it is not said
 * @param method "formula" (when it is not said) or "table"
 * @param seen lines {@code step,grey}, {@code step,red,green,blue}, or for a densitometer {@code
 *     step,density}
 * @param note settings, light, picture
 */
public record CalibrationBody(
    @Nullable String tablet,
    @Nullable String on,
    @Nullable String method,
    @Nullable String seen,
    @Nullable String note) {
  /**
   * The wish.
   *
   * @throws BadValueException naming the part and its limit
   */
  public Calibrate.Wish of(String instrument, LocalDate today) {
    return new Calibrate.Wish(
        instrument,
        tablet == null ? "" : tablet,
        on == null || on.isBlank() ? today : day(on.strip()),
        method == null || method.isBlank()
            ? Calibration.Method.FORMULA
            : Calibration.Method.fromWord(method),
        seen == null ? "" : seen,
        note == null ? "" : note);
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException notOne) {
      throw new BadValueException(
          "day of the calibration", text, "write it as year-month-day, for example 2026-01-10");
    }
  }
}
