package org.wetside.app.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.function.IntBinaryOperator;

/** Writes small TIFF files byte by byte (TIFF 6.0), so that a test says each tag itself. */
@SuppressWarnings({"ByteBufferBackingArray", "ArrayRecordComponent"})
public final class TiffFile {
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int UNDEFINED = 7;

  private final TreeMap<Integer, Field> fields = new TreeMap<>();
  private final int width;
  private final int height;
  private int bits = 16;
  private int channels = 1;
  private boolean lzw;
  private IntBinaryOperator pixels = (x, y) -> 0;

  private record Field(int type, int count, byte[] bytes) {}

  /** Grey, 16 bits, black is 0, nothing said of the light. */
  public TiffFile(int width, int height) {
    this.width = width;
    this.height = height;
    shorts(262, 1);
  }

  /** The value at a place; the same in every channel unless {@link #rgb} is asked for. */
  public TiffFile pixels(IntBinaryOperator values) {
    pixels = values;
    return this;
  }

  /** Three channels: 90 %, all and 80 % of the value. */
  public TiffFile rgb() {
    channels = 3;
    return shorts(262, 2);
  }

  /** Bits of a sample: 8 or 16. */
  public TiffFile bits(int count) {
    bits = count;
    return this;
  }

  /** Compressed by LZW; a predictor says that each sample is the difference to the one before. */
  public TiffFile lzw(int predictor) {
    lzw = true;
    return shorts(259, 5).shorts(317, predictor);
  }

  /** A tag of short numbers. */
  public TiffFile shorts(int tag, int... values) {
    ByteBuffer bytes = ordered(2 * values.length);
    for (int value : values) {
      bytes.putShort((short) value);
    }
    fields.put(tag, new Field(SHORT, values.length, bytes.array()));
    return this;
  }

  /** A tag of bytes, for example a profile. */
  public TiffFile bytes(int tag, byte[] values) {
    fields.put(tag, new Field(UNDEFINED, values.length, values));
    return this;
  }

  /** A colour profile that holds nothing but the grey tone curve. */
  public TiffFile profile(byte[] curve) {
    ByteBuffer profile = ByteBuffer.allocate(128 + 4 + 12 + curve.length);
    profile.putInt(0, profile.capacity());
    profile.position(128);
    profile.putInt(1).put("kTRC".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    profile.putInt(144).putInt(curve.length).put(curve);
    return bytes(34675, profile.array());
  }

  /** The curve of one exponent, as 8.8 fixed point. */
  public static byte[] gamma(double exponent) {
    return ByteBuffer.allocate(14)
        .put("curv".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
        .putInt(0)
        .putInt(1)
        .putShort((short) Math.round(exponent * 256))
        .array();
  }

  /** The straight curve. */
  public static byte[] straight() {
    return ByteBuffer.allocate(12)
        .put("curv".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
        .putInt(0)
        .putInt(0)
        .array();
  }

  /** An Exif directory that says the colour space. */
  public TiffFile exifColour(int space) {
    ByteBuffer exif = ordered(2 + 12 + 4);
    exif.putShort((short) 1).putShort((short) 40961).putShort((short) SHORT).putInt(1);
    exif.putShort((short) space).putShort((short) 0).putInt(0);
    fields.put(34665, new Field(LONG, -1, exif.array()));
    return this;
  }

  /** Writes it. */
  public Path to(Path file) {
    try {
      Files.write(file, written());
      return file;
    } catch (IOException failure) {
      throw new java.io.UncheckedIOException(failure);
    }
  }

  private byte[] written() throws IOException {
    byte[] samples = lzw ? packed(samples()) : samples();
    longs(256, width);
    longs(257, height);
    int[] depths = new int[channels];
    java.util.Arrays.fill(depths, bits);
    shorts(258, depths);
    fields.computeIfAbsent(259, tag -> new Field(SHORT, 1, ordered(2).putShort((short) 1).array()));
    longs(273, 8);
    shorts(277, channels);
    longs(278, height);
    longs(279, samples.length);
    int directory = 8 + samples.length + samples.length % 2;
    int beyond = directory + 2 + 12 * fields.size() + 4;
    ByteArrayOutputStream more = new ByteArrayOutputStream();
    ByteBuffer entries = ordered(2 + 12 * fields.size() + 4);
    entries.putShort((short) fields.size());
    for (var field : fields.entrySet()) {
      Field one = field.getValue();
      entries.putShort((short) (int) field.getKey()).putShort((short) one.type());
      entries.putInt(Math.abs(one.count()));
      if (one.bytes().length <= 4 && one.count() > 0) {
        entries.put(java.util.Arrays.copyOf(one.bytes(), 4));
      } else {
        entries.putInt(beyond + more.size());
        more.write(one.bytes());
        if (more.size() % 2 == 1) {
          more.write(0);
        }
      }
    }
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(
        ordered(8).put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(directory).array());
    whole.write(samples);
    if (samples.length % 2 == 1) {
      whole.write(0);
    }
    whole.write(entries.array());
    whole.write(more.toByteArray());
    return whole.toByteArray();
  }

  private void longs(int tag, int value) {
    fields.put(tag, new Field(LONG, 1, ordered(4).putInt(value).array()));
  }

  /** LZW in its plainest form: every byte by itself, the table cleared before it grows. */
  private static byte[] packed(byte[] bytes) {
    java.math.BigInteger bits = java.math.BigInteger.ONE;
    int count = 0;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i <= bytes.length; i++) {
      int[] codes =
          i == bytes.length
              ? new int[] {257}
              : i % 200 == 0 ? new int[] {256, bytes[i] & 0xff} : new int[] {bytes[i] & 0xff};
      for (int code : codes) {
        bits = bits.shiftLeft(9).or(java.math.BigInteger.valueOf(code));
        count += 9;
        while (count >= 8) {
          count -= 8;
          out.write(bits.shiftRight(count).intValue() & 0xff);
        }
        bits =
            bits.and(java.math.BigInteger.ONE.shiftLeft(count).subtract(java.math.BigInteger.ONE));
      }
    }
    out.write(bits.shiftLeft(8 - count).intValue() & 0xff);
    return out.toByteArray();
  }

  private int difference(int x, int y) {
    int before = x == 0 ? 0 : pixels.applyAsInt(x - 1, y);
    return pixels.applyAsInt(x, y) - before;
  }

  private boolean isPredicted() {
    Field predictor = fields.get(317);
    return predictor != null && predictor.bytes()[0] == 2;
  }

  private byte[] samples() {
    ByteBuffer bytes = ordered(width * height * channels * bits / 8);
    double[] shares = {0.9, 1, 0.8};
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        for (int i = 0; i < channels; i++) {
          int value = isPredicted() ? difference(x, y) : pixels.applyAsInt(x, y);
          int here = channels == 1 ? value : (int) Math.round(value * shares[i]);
          if (bits == 8) {
            bytes.put((byte) (here >> 8));
          } else {
            bytes.putShort((short) here);
          }
        }
      }
    }
    return bytes.array();
  }

  private static ByteBuffer ordered(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }
}
