package org.wetside.app.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Puts packets into pages of one Ogg stream (RFC 3533). Every page ends with a whole packet. */
final class OggWriter {
  private static final int FIRST = 2;
  private static final int LAST = 4;
  private static final int SEGMENT = 255;
  private static final int MOST_SEGMENTS = 255;
  private static final int MOST_PACKETS = 50;
  private static final int HEADER = 27;
  private static final int SUM_AT = 22;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final List<byte[]> waiting = new ArrayList<>();
  private final int serial;
  private int segments;
  private int page;
  private long granule;

  /**
   * @param serial number of the stream
   */
  OggWriter(int serial) {
    this.serial = serial;
  }

  /**
   * Adds a packet.
   *
   * @param granule the position after it, in samples at 48 kHz
   */
  void packet(byte[] packet, long granule) {
    int needed = packet.length / SEGMENT + 1;
    if (segments + needed > MOST_SEGMENTS || waiting.size() == MOST_PACKETS) {
      endPage(false);
    }
    waiting.add(packet);
    segments += needed;
    this.granule = granule;
  }

  /** Ends the page, so that the next packet begins one. */
  void endPage(boolean last) {
    int body = waiting.stream().mapToInt(packet -> packet.length).sum();
    ByteBuffer bytes = ByteBuffer.allocate(HEADER + segments + body).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put("OggS".getBytes(StandardCharsets.US_ASCII)).put((byte) 0);
    bytes.put((byte) ((page == 0 ? FIRST : 0) | (last ? LAST : 0)));
    bytes.putLong(granule).putInt(serial).putInt(page++).putInt(0).put((byte) segments);
    for (byte[] packet : waiting) {
      for (int rest = packet.length; rest >= 0; rest -= SEGMENT) {
        bytes.put((byte) Math.min(rest, SEGMENT));
      }
    }
    waiting.forEach(bytes::put);
    bytes.putInt(SUM_AT, OggSum.of(bytes.array()));
    out.writeBytes(bytes.array());
    waiting.clear();
    segments = 0;
  }

  /** The whole stream. */
  byte[] bytes() {
    return out.toByteArray();
  }
}
