package org.wetside.app.sound;

import io.github.jaredmdobson.concentus.OpusDecoder;
import io.github.jaredmdobson.concentus.OpusException;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;

/** A track as Ogg Opus (RFC 7845), held as a whole: it is small. */
public final class OpusFile implements SoundFile {
  /** Opus counts in these whatever it was made from. */
  static final int PER_SAMPLE = 48_000 / Sampling.RATE;

  private static final int PRE_SKIP_AT = 10;
  private static final int HEADERS = 2;
  private static final int LONGEST_PACKET = Sampling.RATE * 120 / 1000;

  private final byte[] bytes;

  private OpusFile(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Encodes a track. */
  static OpusFile of(CueTrack track) {
    return new OpusFile(new OpusWriting(track).bytes());
  }

  @Override
  public long size() {
    return bytes.length;
  }

  @Override
  public InputStream from(long first) {
    return new ByteArrayInputStream(bytes, (int) first, bytes.length - (int) first);
  }

  /**
   * The samples of an Ogg Opus file with one channel.
   *
   * @throws IllegalArgumentException when it is damaged
   */
  public static short[] decode(byte[] file) {
    OggReader ogg = OggReader.read(file);
    ByteBuffer head = ByteBuffer.wrap(ogg.packets().get(0)).order(ByteOrder.LITTLE_ENDIAN);
    int skip = (head.getShort(PRE_SKIP_AT) & 0xffff) / PER_SAMPLE;
    List<byte[]> packets = ogg.packets().subList(HEADERS, ogg.packets().size());
    short[] samples = new short[(int) (ogg.end() / PER_SAMPLE) + LONGEST_PACKET];
    int at = 0;
    try {
      OpusDecoder decoder = new OpusDecoder(Sampling.RATE, 1);
      for (byte[] packet : packets) {
        int room = samples.length - at;
        at +=
            decoder.decode(
                packet, 0, packet.length, samples, at, Math.min(room, LONGEST_PACKET), false);
      }
    } catch (OpusException e) {
      throw new IllegalArgumentException("damaged Opus packet at sample " + at, e);
    }
    int end = (int) Math.min(at, ogg.end() / PER_SAMPLE);
    return Arrays.copyOfRange(samples, Math.min(skip, end), end);
  }
}
