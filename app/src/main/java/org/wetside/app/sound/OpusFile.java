package org.wetside.app.sound;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

/** A track as Ogg Opus (RFC 7845), held as a whole: it is small. */
public final class OpusFile implements SoundFile {
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
    OpusPackets packets = OpusPackets.read(file);
    return packets.decode(0, packets.samples());
  }
}
