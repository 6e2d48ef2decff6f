package org.wetside.app.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.wetside.core.quantity.BadValueException;

/** An 8-bit view of the channel that is measured, brightened for the eye; never measured itself. */
public final class Preview {
  /** Longest side in pixels that is drawn. */
  public static final int MOST = 1600;

  /** Longest side of a first look: it comes with the page and is light. */
  public static final int FIRST_LOOK = 480;

  private static final int FIRST_LOOK_BYTES = 16_000;
  private static final int LEAST = 16;
  private static final double FOR_THE_EYE = 1 / 2.2;
  private static final float[] QUALITIES = {0.6f, 0.4f, 0.25f, 0.12f};

  /** Places of the file that are averaged across for one of the view, where there are as many. */
  private static final int AVERAGED = 4;

  private static final byte[] TONES = tones();

  private Preview() {}

  /**
   * A region as JPEG; of at most 16 kB when it is no larger than {@link #FIRST_LOOK}, as far as its
   * quality can be lowered.
   *
   * @param longest side of the view at most, 16 to {@link #MOST} pixels
   * @throws BadValueException when the region leaves the picture, or the size its limits
   */
  public static byte[] jpeg(TiffPicture picture, Rectangle region, int longest) {
    PictureFacts facts = picture.facts();
    if (region.isEmpty() || !new Rectangle(facts.width(), facts.height()).contains(region)) {
      throw new BadValueException(
          "region",
          region.x + "," + region.y + " " + region.width + "×" + region.height,
          "it must lie inside " + facts.width() + "×" + facts.height() + " pixels");
    }
    if (longest < LEAST || longest > MOST) {
      throw new BadValueException("size", longest + " pixels", LEAST + " to " + MOST + " pixels");
    }
    int every = Math.max(1, (Math.max(region.width, region.height) + longest - 1) / longest);
    int apart = Math.max(1, every / AVERAGED);
    BufferedImage view =
        toned(picture.read(region, apart), facts.channels() == 1 ? 0 : 1, every / apart);
    byte[] jpeg = written(view, QUALITIES[0]);
    for (int i = 1;
        i < QUALITIES.length && longest <= FIRST_LOOK && jpeg.length > FIRST_LOOK_BYTES;
        i++) {
      jpeg = written(view, QUALITIES[i]);
    }
    return jpeg;
  }

  /** Averages squares of so many samples: grain that is skipped over would look like noise. */
  private static BufferedImage toned(Raster raster, int channel, int square) {
    int width = Math.max(1, raster.getWidth() / square);
    int height = Math.max(1, raster.getHeight() / square);
    BufferedImage view = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    int across = Math.min(square, raster.getWidth());
    int down = Math.min(square, raster.getHeight());
    int[] samples = new int[across * down];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        raster.getSamples(x * square, y * square, across, down, channel, samples);
        long sum = 0;
        for (int sample : samples) {
          sum += sample;
        }
        view.getRaster().setSample(x, y, 0, TONES[(int) (sum / samples.length)] & 0xff);
      }
    }
    return view;
  }

  private static byte[] tones() {
    byte[] tones = new byte[65536];
    for (int i = 0; i < tones.length; i++) {
      tones[i] = (byte) Math.round(255 * Math.pow(i / 65535.0, FOR_THE_EYE));
    }
    return tones;
  }

  private static byte[] written(BufferedImage view, float quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(quality);
        writer.setOutput(out);
        writer.write(null, new IIOImage(view, null, null), param);
      }
      return bytes.toByteArray();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } finally {
      writer.dispose();
    }
  }
}
