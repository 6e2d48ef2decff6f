package org.wetside.app.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The packets of a file with one Ogg stream.
 *
 * @param packets in order
 * @param end position after the last, in samples at 48 kHz
 */
record OggReader(List<byte[]> packets, long end) {
  private static final int HEADER = 27;
  private static final int CAPTURE = 0x5367674f;
  private static final int GRANULE_AT = 6;
  private static final int SUM_AT = 22;
  private static final int COUNT_AT = 26;
  private static final int SEGMENT = 255;

  /**
   * Reads the whole.
   *
   * @throws IllegalArgumentException when a page is not one, or is damaged
   */
  static OggReader read(byte[] file) {
    List<byte[]> packets = new ArrayList<>();
    ByteArrayOutputStream packet = new ByteArrayOutputStream();
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    long end = 0;
    for (int page = 0; page < file.length; ) {
      int count = file.length - page < HEADER ? 0 : file[page + COUNT_AT] & 0xff;
      int at = page + HEADER + count;
      int next = at;
      for (int i = page + HEADER; i < at && i < file.length; i++) {
        next += file[i] & 0xff;
      }
      check(file, bytes, page, next);
      for (int i = page + HEADER; i < page + HEADER + count; i++) {
        int length = file[i] & 0xff;
        packet.write(file, at, length);
        at += length;
        if (length < SEGMENT) {
          packets.add(packet.toByteArray());
          packet.reset();
        }
      }
      end = bytes.getLong(page + GRANULE_AT);
      page = next;
    }
    return new OggReader(packets, end);
  }

  private static void check(byte[] file, ByteBuffer bytes, int page, int next) {
    boolean whole = next > page + HEADER - 1 && next <= file.length;
    if (!whole || file.length - page < HEADER || bytes.getInt(page) != CAPTURE) {
      throw new IllegalArgumentException("no Ogg page at byte " + page);
    }
    byte[] copy = Arrays.copyOfRange(file, page, next);
    Arrays.fill(copy, SUM_AT, SUM_AT + Integer.BYTES, (byte) 0);
    if (OggSum.of(copy) != bytes.getInt(page + SUM_AT)) {
      throw new IllegalArgumentException("damaged Ogg page at byte " + page);
    }
  }
}
