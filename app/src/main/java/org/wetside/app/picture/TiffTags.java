package org.wetside.app.picture;

import java.util.Optional;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;

/** What stands in the tags of a TIFF file (TIFF 6.0; Exif). */
final class TiffTags {
  static final int BITS = 258;
  static final int COMPRESSION = 259;
  static final int PHOTOMETRIC = 262;
  static final int SAMPLES = 277;
  static final int PREDICTOR = 317;
  static final int SAMPLE_FORMAT = 339;
  private static final int TRANSFER = 301;
  private static final int PROFILE = 34675;
  private static final int EXIF = 34665;
  private static final int EXIF_COLOUR = 40961;
  private static final int EXIF_GAMMA = 42240;
  private static final double FULL = 65535;

  private final TIFFDirectory directory;

  TiffTags(TIFFDirectory directory) {
    this.directory = directory;
  }

  /** The first number under a tag. */
  int number(int tag, int otherwise) {
    TIFFField field = directory.getTIFFField(tag);
    return field == null || field.getCount() == 0 ? otherwise : field.getAsInt(0);
  }

  /** What its profile, its transfer table and its Exif say of the light; one that says no wins. */
  Encoding encoding() {
    return profile().or(transfer()).or(exif());
  }

  private Encoding profile() {
    TIFFField field = directory.getTIFFField(PROFILE);
    if (field == null) {
      return Encoding.silent();
    }
    Optional<ToneCurve> curve = ColourProfile.curve(field.getAsBytes());
    return curve.map(one -> one.encoding("its colour profile")).orElseGet(Encoding::silent);
  }

  private Encoding transfer() {
    TIFFField field = directory.getTIFFField(TRANSFER);
    if (field == null || field.getCount() < 2) {
      return Encoding.silent();
    }
    int whole = 1 << number(BITS, 1);
    double[] values = new double[Math.min(field.getCount(), whole)];
    for (int i = 0; i < values.length; i++) {
      values[i] = field.getAsInt(i) / FULL;
    }
    return ToneCurve.ofTable(values).encoding("its transfer table");
  }

  private Encoding exif() {
    TIFFField field = directory.getTIFFField(EXIF);
    if (field == null || !field.hasDirectory()) {
      return Encoding.silent();
    }
    TIFFDirectory exif = field.getDirectory();
    TIFFField gamma = exif.getTIFFField(EXIF_GAMMA);
    if (gamma != null) {
      double written = gamma.getAsDouble(0);
      return ToneCurve.of(value -> Math.pow(value, written)).encoding("its Exif");
    }
    TIFFField colour = exif.getTIFFField(EXIF_COLOUR);
    return colour != null && colour.getAsInt(0) == 1
        ? new Encoding(Encoding.Kind.CURVED, "its Exif says sRGB, which is gamma-encoded")
        : Encoding.silent();
  }
}
