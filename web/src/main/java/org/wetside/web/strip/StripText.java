package org.wetside.web.strip;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.StepScale;

/** A strip as words, and as the fields it was typed by: reading them again gives the same strip. */
final class StripText {
  private StripText() {}

  /** {@code TRI-X 400 in D-76 1+1}. */
  static String name(FilmStrip strip) {
    return strip.film() + " in " + developer(strip);
  }

  /** The same with the tank, where it was said. */
  static String kind(FilmStrip strip) {
    return strip.vessel() == Vessel.NOT_STATED
        ? name(strip)
        : name(strip) + ", " + strip.vessel().label();
  }

  /** {@code D-76 1+1}; the name alone where no dilution was said. */
  static String developer(FilmStrip strip) {
    return strip.dilution() instanceof Dilution.Unknown
        ? strip.developer()
        : strip.developer() + " " + strip.dilution().label();
  }

  /** Development time as {@code 9:40}. */
  static String time(FilmStrip strip) {
    return Digits.clock(TimeSpan.toSeconds(strip.time()));
  }

  /** A place as it is typed: {@code 3}, {@code -2.4}. */
  static String place(double place) {
    return plain(place);
  }

  /** Every field of the form. */
  static Map<String, String> fields(FilmStrip strip, Units units) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("film", strip.film());
    fields.put("developer", strip.developer());
    fields.put(
        "dilution", strip.dilution() instanceof Dilution.Unknown ? "" : strip.dilution().label());
    fields.put("minutes", time(strip));
    fields.put("temp", strip.temperature().map(units::words).orElse(""));
    fields.put("vessel", strip.vessel().word());
    fields.put("day", strip.developedOn().map(Object::toString).orElse(""));
    fields.put("light", strip.light().word());
    fields.put("columns", strip.scale().column());
    fields.put("readings", readings(strip));
    if (strip.scale() instanceof StepScale.TabletSteps tablet) {
      fields.put("clear", plain(tablet.clear().log10LuxSeconds()));
      fields.put(
          "tablet",
          tablet.densities().stream()
              .map(density -> decimal(density.value()))
              .collect(Collectors.joining(", ")));
    }
    if (strip.scale() instanceof StepScale.CameraStops camera) {
      fields.put("index", plain(camera.metered().isoArithmetic()));
    }
    fields.put("baseFog", strip.baseFog().map(density -> decimal(density.value())).orElse(""));
    fields.put("note", strip.note());
    fields.put("keptTablet", strip.with().tablet());
    fields.put("instrument", strip.with().instrument());
    fields.put("calibratedOn", strip.with().calibratedOn().map(Object::toString).orElse(""));
    return fields;
  }

  /** The readings as a table with its header, to the digits they were typed with. */
  static String readings(FilmStrip strip) {
    int decimals = (int) Math.round(-Math.log10(Math.max(strip.densityStep(), 1e-9)));
    return strip.readings().stream()
        .map(
            one ->
                plain(one.place())
                    + ","
                    + String.format(Locale.ROOT, "%." + decimals + "f", one.density().value()))
        .collect(Collectors.joining("\n", strip.scale().column() + ",density\n", "\n"));
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  /** With a point in it, so that a comma after it parts numbers. */
  private static String decimal(double value) {
    String plain = plain(value);
    return plain.indexOf('.') >= 0 ? plain : plain + ".0";
  }
}
