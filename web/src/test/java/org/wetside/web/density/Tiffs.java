package org.wetside.web.density;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Real TIFF files: twelve steps side by side, each 20 pixels wide, densities 0.05, 0.20 … 1.70. */
final class Tiffs {
  private Tiffs() {}

  static double density(int step) {
    return 0.05 + 0.15 * (step - 1);
  }

  /** Grey, 16 bits, nothing said of the light. */
  static byte[] steps() {
    return written(BufferedImage.TYPE_USHORT_GRAY, "tiff");
  }

  static byte[] eightBits() {
    return written(BufferedImage.TYPE_BYTE_GRAY, "tiff");
  }

  static byte[] jpeg() {
    return written(BufferedImage.TYPE_BYTE_GRAY, "jpeg");
  }

  private static byte[] written(int type, String format) {
    BufferedImage image = new BufferedImage(240, 60, type);
    int shift = type == BufferedImage.TYPE_USHORT_GRAY ? 0 : 8;
    for (int x = 0; x < 240; x++) {
      int value = (int) Math.round(60000 * Math.pow(10, -density(x / 20 + 1)));
      for (int y = 0; y < 60; y++) {
        image.getRaster().setSample(x, y, 0, value >> shift);
      }
    }
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.write(image, format, bytes);
      return bytes.toByteArray();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
