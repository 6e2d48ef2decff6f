package org.wetside.acceptance.bench;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** What a screenshot shows. */
final class Picture {
  private Picture() {}

  /** The brightest part of any pixel, 0 to 255. */
  static int brightest(byte[] png) {
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      int most = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          int rgb = image.getRGB(x, y);
          most = Math.max(most, Math.max(rgb & 255, Math.max(rgb >> 8 & 255, rgb >> 16 & 255)));
        }
      }
      return most;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
