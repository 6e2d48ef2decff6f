package org.wetside.web.equipment;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.thermal.Thermometer;
import org.wetside.core.thermal.ThermometerOffset;
import org.wetside.web.page.FieldReader;

/**
 * A thermometer over HTTP; the offset is null while it has not been compared.
 *
 * @param name unique name
 * @param offsetK what is added to its readings
 * @param atC the true temperature at which that was found
 * @param doubtK half width of the band the comparison left
 * @param found the day, year-month-day
 * @param how in the user's words
 */
public record ThermometerView(
    @Nullable String name,
    @Nullable Double offsetK,
    @Nullable Double atC,
    @Nullable Double doubtK,
    @Nullable String found,
    @Nullable String how) {

  /** The view of a thermometer. */
  public static ThermometerView of(Thermometer thermometer) {
    Optional<ThermometerOffset> offset = thermometer.offset();
    return new ThermometerView(
        thermometer.name(),
        offset.map(known -> known.correction().kelvins()).orElse(null),
        offset.map(known -> known.at().celsius()).orElse(null),
        offset.map(known -> known.doubt().kelvins()).orElse(null),
        offset.map(known -> known.found().toString()).orElse(null),
        offset.map(ThermometerOffset::how).orElse(null));
  }

  /** The offset that was sent; empty when none was. */
  Optional<ThermometerOffset> offset(LocalDate today) {
    if (offsetK == null) {
      return Optional.empty();
    }
    if (atC == null) {
      throw new BadValueException("atC", "", "say at which true temperature it was found");
    }
    return Optional.of(
        new ThermometerOffset(
            TemperatureDifference.ofKelvins(offsetK),
            Temperature.ofCelsius(atC),
            doubtK == null ? ComparisonBody.USUAL_DOUBT : TemperatureDifference.ofKelvins(doubtK),
            found == null ? today : FieldReader.day(found),
            how == null ? "" : how));
  }
}
