package org.wetside.app.sound;

import io.github.jaredmdobson.concentus.OpusDecoder;
import io.github.jaredmdobson.concentus.OpusException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;

/**
 * An Ogg Opus file with one channel and packets of 20 ms, of which any part can be decoded.
 *
 * @param packets of sound, in order
 * @param skip samples at its beginning that are not played
 * @param samples how many are played
 */
record OpusPackets(List<byte[]> packets, int skip, int samples) {
  /** Samples of one packet. */
  static final int FRAME = Sampling.RATE * 20 / 1000;

  /** Opus counts in samples at 48 kHz whatever it was made from. */
  static final int PER_SAMPLE = 48_000 / Sampling.RATE;

  private static final int PRE_SKIP_AT = 10;
  private static final int HEADERS = 2;

  /** A decoder that begins in the middle is right after 80 ms (RFC 7845, 4.2). */
  private static final int RUN_UP = 4;

  /**
   * From the bytes of a file.
   *
   * @throws IllegalArgumentException when it is damaged
   */
  static OpusPackets read(byte[] file) {
    OggReader ogg = OggReader.read(file);
    ByteBuffer head = ByteBuffer.wrap(ogg.packets().get(0)).order(ByteOrder.LITTLE_ENDIAN);
    int skip = (head.getShort(PRE_SKIP_AT) & 0xffff) / PER_SAMPLE;
    List<byte[]> packets = ogg.packets().subList(HEADERS, ogg.packets().size());
    int whole = (int) Math.min(ogg.end() / PER_SAMPLE, (long) packets.size() * FRAME);
    return new OpusPackets(packets, skip, Math.max(0, whole - skip));
  }

  /**
   * The samples of one part.
   *
   * @throws IllegalArgumentException when a packet is damaged
   */
  short[] decode(int first, int count) {
    int begin = skip + first;
    short[] part = new short[Math.max(0, Math.min(count, samples - first))];
    short[] frame = new short[FRAME];
    int packet = Math.max(0, begin / FRAME - RUN_UP);
    try {
      OpusDecoder decoder = new OpusDecoder(Sampling.RATE, 1);
      for (int at = packet * FRAME; at < begin + part.length; at += FRAME) {
        byte[] bytes = packets.get(packet++);
        decoder.decode(bytes, 0, bytes.length, frame, 0, FRAME, false);
        int from = Math.max(at, begin);
        int length = Math.min(at + FRAME, begin + part.length) - from;
        if (length > 0) {
          System.arraycopy(frame, from - at, part, from - begin, length);
        }
      }
    } catch (OpusException e) {
      throw new IllegalArgumentException("damaged Opus packet before number " + packet, e);
    }
    return part;
  }
}
