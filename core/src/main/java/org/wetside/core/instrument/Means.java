package org.wetside.core.instrument;

import java.util.List;
import org.wetside.core.quantity.BadValueException;

/**
 * Mean values of one patch, one for each channel of its picture: grey alone, or red, green, blue.
 * What is measured is the grey, or the green, which lies nearest to what the eye sees; the three
 * are never mixed, because each follows a law of its own.
 *
 * @param channels one or three means of a linear 16-bit picture, 0 to 65535
 */
public record Means(List<Double> channels) implements Seen {
  private static final double MOST = 65535;
  private static final int GREEN = 1;
  private static final int COLOURS = 3;

  /** Keeps an unmodifiable copy. */
  public Means {
    channels = List.copyOf(channels);
    if (channels.size() != 1 && channels.size() != COLOURS) {
      throw new BadValueException(
          "channels", channels.size() + "", "one (grey) or three (red, green, blue)");
    }
    for (double one : channels) {
      if (!(one >= 0) || one > MOST) {
        throw new BadValueException(
            "pixel value", String.valueOf(one), "a mean of 16 bits lies from 0 to 65535");
      }
    }
  }

  /** Of a grey picture. */
  public static Means ofGrey(double grey) {
    return new Means(List.of(grey));
  }

  /** Of a picture in three colours. */
  public static Means ofColours(double red, double green, double blue) {
    return new Means(List.of(red, green, blue));
  }

  /** Whether there are three channels. */
  public boolean isColour() {
    return channels.size() == COLOURS;
  }

  /** The channel that is measured. */
  public double measured() {
    return isColour() ? channels.get(GREEN) : channels.get(0);
  }

  /** Name of the channel that is measured: {@code grey} or {@code green}. */
  public String channel() {
    return isColour() ? "green" : "grey";
  }

  /** Log10 of red over green; NaN where there is no such thing. */
  double redOverGreen() {
    return ratio(0);
  }

  /** Log10 of blue over green; NaN where there is no such thing. */
  double blueOverGreen() {
    return ratio(2);
  }

  private double ratio(int channel) {
    return isColour() && measured() > 0 && channels.get(channel) > 0
        ? Math.log10(channels.get(channel) / measured())
        : Double.NaN;
  }
}
