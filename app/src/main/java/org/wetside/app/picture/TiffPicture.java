package org.wetside.app.picture;

import java.awt.Rectangle;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.CannotDoException;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;

/**
 * Front door of pictures: a linear 16-bit TIFF, open to be measured. Of a large file only the rows
 * of a rectangle are read.
 */
public final class TiffPicture implements AutoCloseable {
  private static final int BAND_PIXELS = 1 << 20;

  private final ImageInputStream stream;
  private final ImageReader reader;
  private final PictureFacts facts;

  private TiffPicture(ImageInputStream stream, ImageReader reader, PictureFacts facts) {
    this.stream = stream;
    this.reader = reader;
    this.facts = facts;
  }

  /**
   * Opens a file.
   *
   * @throws BadValueException when it is no TIFF, or none that can be measured, with the reason
   * @throws CannotDoException when it cannot be read
   */
  public static TiffPicture open(Path file) {
    return open(file, String.valueOf(file.getFileName()));
  }

  /** The same; messages call it by another name. */
  public static TiffPicture open(Path file, String name) {
    TiffRules rules = new TiffRules(name);
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    ImageInputStream stream = null;
    try {
      refuseOtherFormats(file, rules);
      stream = ImageIO.createImageInputStream(file.toFile());
      reader.setInput(stream, false, false);
      TiffTags tags = new TiffTags(TIFFDirectory.createFromMetadata(reader.getImageMetadata(0)));
      Encoding encoding = rules.check(tags);
      PictureFacts facts =
          new PictureFacts(
              name,
              reader.getWidth(0),
              reader.getHeight(0),
              tags.number(TiffTags.SAMPLES, 1),
              reader.getNumImages(true),
              encoding);
      return new TiffPicture(stream, reader, facts);
    } catch (IOException unreadable) {
      close(stream, reader);
      throw new CannotDoException("reading the picture " + name + ": " + unreadable, unreadable);
    } catch (BadValueException refused) {
      close(stream, reader);
      throw refused;
    } catch (RuntimeException damaged) {
      close(stream, reader);
      throw rules.refused("it cannot be read", "the file is damaged or not a TIFF");
    }
  }

  private static void refuseOtherFormats(Path file, TiffRules rules) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(4);
    }
    if (head.length == 4 && (head[0] & 0xff) == 0xff && (head[1] & 0xff) == 0xd8) {
      throw rules.refused(
          "JPEG",
          "8 bits, gamma-encoded, compressed with loss: nothing to measure; scan to a linear 16-bit"
              + " TIFF");
    }
    boolean tiff =
        head.length == 4
            && ((head[0] == 'I' && head[1] == 'I' && head[2] == 42)
                || (head[0] == 'M' && head[1] == 'M' && head[3] == 42));
    if (!tiff) {
      throw rules.refused("not a TIFF", "only linear 16-bit TIFF files are measured");
    }
  }

  /** What it says of itself. */
  public PictureFacts facts() {
    return facts;
  }

  /**
   * Measures rectangles.
   *
   * @throws BadValueException when one leaves the picture; then nothing is measured
   */
  public List<PatchMeasure> measure(List<PatchRectangle> patches) {
    patches.forEach(patch -> patch.inside(facts.width(), facts.height()));
    return patches.stream().map(this::measure).toList();
  }

  private PatchMeasure measure(PatchRectangle patch) {
    List<Tally> tallies = new ArrayList<>();
    for (int i = 0; i < facts.channels(); i++) {
      tallies.add(new Tally());
    }
    int rows = Math.max(1, BAND_PIXELS / patch.width());
    for (int y = 0; y < patch.height(); y += rows) {
      int now = Math.min(rows, patch.height() - y);
      Raster raster = read(new Rectangle(patch.x(), patch.y() + y, patch.width(), now), 1);
      int[] samples = new int[raster.getWidth() * raster.getHeight()];
      for (int i = 0; i < tallies.size(); i++) {
        tallies
            .get(i)
            .add(raster.getSamples(0, 0, raster.getWidth(), raster.getHeight(), i, samples));
      }
    }
    List<PatchMeasure.Channel> channels = new ArrayList<>();
    for (int i = 0; i < tallies.size(); i++) {
      channels.add(tallies.get(i).channel(name(i)));
    }
    return new PatchMeasure(patch, (long) patch.width() * patch.height(), channels);
  }

  private String name(int channel) {
    return facts.channels() == 1 ? "grey" : List.of("red", "green", "blue").get(channel);
  }

  /** Samples of a region, every so many pixels, as they stand in the file. */
  Raster read(Rectangle region, int every) {
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceRegion(region);
    param.setSourceSubsampling(every, every, 0, 0);
    try {
      return reader.read(0, param).getRaster();
    } catch (IOException | RuntimeException unreadable) {
      throw new CannotDoException(
          "the pixels of "
              + facts.name()
              + " cannot be read ("
              + unreadable.getMessage()
              + "); save it without compression",
          unreadable);
    }
  }

  @Override
  public void close() {
    close(stream, reader);
  }

  private static void close(@Nullable ImageInputStream stream, ImageReader reader) {
    reader.dispose();
    if (stream != null) {
      try {
        stream.close();
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }
  }
}
