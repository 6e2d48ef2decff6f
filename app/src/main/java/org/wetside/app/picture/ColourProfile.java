package org.wetside.app.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The tone curve in an ICC profile (ISO 15076-1, clauses 7.3, 10.6 and 10.18: tag table, {@code
 * curv}, {@code para}). The class of the JDK knows no {@code para} and wants a native library.
 */
final class ColourProfile {
  private static final int HEADER = 128;
  private static final int TAG_BYTES = 12;
  private static final double FIXED = 65536;

  private ColourProfile() {}

  /** Its grey, or else its green curve; empty when it has none, or is damaged. */
  static Optional<ToneCurve> curve(byte[] profile) {
    try {
      ByteBuffer bytes = ByteBuffer.wrap(profile);
      int tags = bytes.getInt(HEADER);
      for (String wanted : new String[] {"kTRC", "gTRC"}) {
        for (int i = 0; i < tags; i++) {
          int entry = HEADER + 4 + i * TAG_BYTES;
          if (name(bytes, entry).equals(wanted)) {
            return read(bytes, bytes.getInt(entry + 4));
          }
        }
      }
      return Optional.empty();
    } catch (IndexOutOfBoundsException damaged) {
      return Optional.empty();
    }
  }

  private static Optional<ToneCurve> read(ByteBuffer bytes, int at) {
    return switch (name(bytes, at)) {
      case "curv" -> Optional.of(table(bytes, at + 8));
      case "para" -> Optional.of(formula(bytes, at + 8));
      default -> Optional.empty();
    };
  }

  private static ToneCurve table(ByteBuffer bytes, int at) {
    int count = bytes.getInt(at);
    if (count == 0) {
      return ToneCurve.of(value -> value);
    }
    if (count == 1) {
      double gamma = (bytes.getShort(at + 4) & 0xffff) / 256.0;
      return ToneCurve.of(value -> Math.pow(value, gamma));
    }
    double[] values = new double[Math.min(count, (bytes.limit() - at - 4) / 2)];
    for (int i = 0; i < values.length; i++) {
      values[i] = (bytes.getShort(at + 4 + 2 * i) & 0xffff) / 65535.0;
    }
    return ToneCurve.ofTable(values);
  }

  /** Y = (aX+b)^g + e from X = d on, cX + f below; the shorter kinds leave parts of it out. */
  private static ToneCurve formula(ByteBuffer bytes, int at) {
    int kind = bytes.getShort(at);
    double[] p = new double[7];
    int count = new int[] {1, 3, 4, 5, 7}[Math.min(kind, 4)];
    for (int i = 0; i < count; i++) {
      p[i] = bytes.getInt(at + 4 + 4 * i) / FIXED;
    }
    double gamma = p[0];
    return switch (kind) {
      case 0 -> ToneCurve.of(x -> Math.pow(x, gamma));
      case 1 -> ToneCurve.of(x -> x >= -p[2] / p[1] ? Math.pow(p[1] * x + p[2], gamma) : 0);
      case 2 ->
          ToneCurve.of(x -> x >= -p[2] / p[1] ? Math.pow(p[1] * x + p[2], gamma) + p[3] : p[3]);
      case 3 -> ToneCurve.of(x -> x >= p[4] ? Math.pow(p[1] * x + p[2], gamma) : p[3] * x);
      default ->
          ToneCurve.of(x -> x >= p[4] ? Math.pow(p[1] * x + p[2], gamma) + p[5] : p[3] * x + p[6]);
    };
  }

  private static String name(ByteBuffer bytes, int at) {
    byte[] name = new byte[4];
    for (int i = 0; i < name.length; i++) {
      name[i] = bytes.get(at + i);
    }
    return new String(name, StandardCharsets.US_ASCII);
  }
}
