package org.wetside.core.quantity;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * The units a person reads and types temperatures and volumes in. They change words only: values
 * stay exact, and whoever types a unit beside the number is understood whatever was chosen.
 *
 * @param scale of temperatures
 * @param measure of volumes
 */
public record Units(Scale scale, Measure measure) {
  /** Degrees Celsius and millilitres. */
  public static final Units METRIC = new Units(Scale.CELSIUS, Measure.MILLILITRES);

  private static final Pattern BARE_NUMBER = Pattern.compile("\\s*[+-]?\\d*\\.?\\d+\\s*");

  /** Below this a tenth of a millilitre can be read off a measure. */
  private static final double FINE_ML = 100;

  /** Below this a hundredth of an ounce can be. */
  private static final double FINE_OUNCES = 10;

  /** Of temperatures. */
  public enum Scale {
    /** Degrees Celsius. */
    CELSIUS("°C"),
    /** Degrees Fahrenheit. */
    FAHRENHEIT("°F");

    private final String sign;

    Scale(String sign) {
      this.sign = sign;
    }

    /** As printed behind a number. */
    public String sign() {
      return sign;
    }
  }

  /** Of volumes. */
  public enum Measure {
    /** Millilitres. */
    MILLILITRES("mL"),
    /** US fluid ounces. */
    US_FLUID_OUNCES("fl oz");

    private final String sign;

    Measure(String sign) {
      this.sign = sign;
    }

    /** As printed behind a number. */
    public String sign() {
      return sign;
    }
  }

  public Units {
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(measure, "measure");
  }

  /** To a tenth of a degree, for example {@code 20 °C}, {@code 68.5 °F}. */
  public String words(Temperature temperature) {
    return trimmed(inScale(temperature), 1) + " " + scale.sign();
  }

  /**
   * To a tenth of a degree, for example {@code 18.3 to 23.9 °C}; a band of less than a kelvin to a
   * hundredth. Reads back by {@link TemperatureRange#parse}.
   */
  public String words(TemperatureRange band) {
    int decimals = band.high().minus(band.low()).kelvins() < 1 ? 2 : 1;
    return trimmed(inScale(band.low()), decimals)
        + " to "
        + trimmed(inScale(band.high()), decimals)
        + " "
        + scale.sign();
  }

  /** As one reads it off a measure, for example {@code 31.3 mL}, {@code 144 mL}. */
  public String words(Volume volume) {
    return number(volume) + " " + measure.sign();
  }

  /** {@link #words(Volume)} without the unit, for where it stands once behind several numbers. */
  public String number(Volume volume) {
    return measure == Measure.MILLILITRES
        ? trimmed(volume.millilitres(), volume.millilitres() < FINE_ML ? 1 : 0)
        : trimmed(volume.usFluidOunces(), volume.usFluidOunces() < FINE_OUNCES ? 2 : 1);
  }

  /**
   * Reads a temperature; a number without a unit is on the chosen scale.
   *
   * @throws BadValueException as {@link Temperature#parse}
   */
  public Temperature temperature(String typed) {
    return Temperature.parse(isBare(typed) ? typed + scale.sign() : typed);
  }

  /**
   * Reads a volume; a number without a unit is in the chosen measure.
   *
   * @throws BadValueException as {@link Volume#parse}
   */
  public Volume volume(String typed) {
    return Volume.parse(isBare(typed) ? typed + measure.sign() : typed);
  }

  private double inScale(Temperature temperature) {
    return scale == Scale.CELSIUS ? temperature.celsius() : temperature.fahrenheit();
  }

  private static boolean isBare(String typed) {
    return BARE_NUMBER.matcher(typed).matches();
  }

  private static String trimmed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    String plain = text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    return plain.equals("-0") ? "0" : plain;
  }
}
