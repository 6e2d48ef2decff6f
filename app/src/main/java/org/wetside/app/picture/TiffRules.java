package org.wetside.app.picture;

import org.wetside.core.quantity.BadValueException;

/** Which TIFF files can be measured, and why the others cannot. */
final class TiffRules {
  private static final int SIXTEEN = 16;
  private static final int INVERTED = 0;
  private static final int GREY = 1;
  private static final int RGB = 2;
  private static final int PALETTE = 3;
  private static final int CMYK = 5;
  private static final int YCBCR = 6;
  private static final int LAB = 8;
  private static final int SENSOR = 32803;
  private static final int SENSOR_LINEAR = 34892;
  private static final int OLD_JPEG = 6;
  private static final int JPEG = 7;
  private static final int LZW = 5;
  private static final int DEFLATE = 8;
  private static final int OLD_DEFLATE = 32946;

  private final String name;

  TiffRules(String name) {
    this.name = name;
  }

  /** The encoding, when nothing else stands in the way. */
  Encoding check(TiffTags tags) {
    int compression = tags.number(TiffTags.COMPRESSION, 1);
    if (compression == JPEG || compression == OLD_JPEG) {
      throw refused("JPEG inside a TIFF", "compressed with loss, values are not what was seen");
    }
    int photometric = tags.number(TiffTags.PHOTOMETRIC, GREY);
    int bits = tags.number(TiffTags.BITS, 1);
    boolean packed = compression == LZW || compression == DEFLATE || compression == OLD_DEFLATE;
    if (packed && bits == SIXTEEN && tags.number(TiffTags.PREDICTOR, 1) != 1) {
      throw refused(
          "compressed as differences of neighbours (a predictor)",
          "16-bit values stored so are not read here; save it without compression or predictor");
    }
    if (photometric != GREY && photometric != RGB) {
      throw refused("not grey or RGB", kind(photometric));
    }
    if (bits != SIXTEEN) {
      throw refused(bits + " bits", depth(bits));
    }
    if (tags.number(TiffTags.SAMPLE_FORMAT, 1) != 1) {
      throw refused("signed or floating values", "save it as unsigned 16 bits");
    }
    int channels = tags.number(TiffTags.SAMPLES, 1);
    if (channels != (photometric == GREY ? 1 : 3)) {
      throw refused(
          channels + " channels",
          "grey (1) or red, green and blue (3) are measured; save it without infrared or alpha");
    }
    Encoding encoding = tags.encoding();
    if (encoding.kind() == Encoding.Kind.CURVED) {
      throw refused(
          encoding.says(),
          "a curve that somebody chose stands between its values and the light; scan it linear"
              + " (gamma 1.0)");
    }
    return encoding;
  }

  private static String depth(int bits) {
    return bits == 8
        ? "8 bits are nearly always gamma-encoded, and even linear they are off by 0.03 at density"
            + " 1.5 by rounding alone; save a linear 16-bit TIFF"
        : "only 16 bits are measured; save a linear 16-bit TIFF";
  }

  private static String kind(int photometric) {
    return switch (photometric) {
      case INVERTED -> "white is stored as 0, inverted; save it with black as 0";
      case PALETTE -> "its values are places in a palette, not light; save a linear 16-bit TIFF";
      case CMYK -> "its values are inks for printing; save a linear 16-bit TIFF";
      case YCBCR -> "its values are brightness and colour of a screen; save a linear 16-bit TIFF";
      case LAB -> "its values are perceived lightness, not light; save a linear 16-bit TIFF";
      case SENSOR, SENSOR_LINEAR -> "it is the raw of a sensor; develop it to a linear 16-bit TIFF";
      default -> "kind " + photometric + " is not known; save a linear 16-bit TIFF";
    };
  }

  BadValueException refused(String what, String reason) {
    return new BadValueException("picture", name, what + ": " + reason);
  }
}
