package org.wetside.app.sound;

import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * A track as a WAV file (RIFF, PCM, 16 bit, one channel). Its samples are made while they are read,
 * so that hours of sound take no memory.
 *
 * @param track what it holds
 */
public record WavFile(CueTrack track) implements SoundFile {
  private static final int HEADER = 44;
  private static final int PCM = 1;
  private static final int BYTES = 2;
  private static final int BLOCK = Sampling.RATE;

  @Override
  public long size() {
    return HEADER + BYTES * track.samples();
  }

  @Override
  public InputStream from(long first) {
    return new Reading(first);
  }

  private byte[] header() {
    int data = Math.toIntExact(BYTES * track.samples());
    ByteBuffer header = ByteBuffer.allocate(HEADER).order(ByteOrder.LITTLE_ENDIAN);
    header.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(HEADER - 8 + data);
    header.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
    header.putShort((short) PCM).putShort((short) 1).putInt(Sampling.RATE);
    header.putInt(BYTES * Sampling.RATE).putShort((short) BYTES).putShort((short) (8 * BYTES));
    header.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(data);
    return header.array();
  }

  private byte[] block(long index) {
    long first = index * BLOCK;
    int count = (int) Math.min(BLOCK, track.samples() - first);
    ByteBuffer bytes = ByteBuffer.allocate(BYTES * count).order(ByteOrder.LITTLE_ENDIAN);
    for (short sample : track.read(first, count)) {
      bytes.putShort(sample);
    }
    return bytes.array();
  }

  /** Goes through the file block by block. */
  private final class Reading extends InputStream {
    private long at;
    private byte[] held = {};
    private long heldFrom = -1;

    Reading(long first) {
      at = first;
    }

    @Override
    public int read() {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int offset, int length) {
      if (at >= size()) {
        return -1;
      }
      hold();
      int skip = (int) (at - heldFrom);
      int count = Math.min(length, held.length - skip);
      System.arraycopy(held, skip, into, offset, count);
      at += count;
      return count;
    }

    private void hold() {
      if (heldFrom >= 0 && at >= heldFrom && at < heldFrom + held.length) {
        return;
      }
      if (at < HEADER) {
        held = header();
        heldFrom = 0;
      } else {
        long index = (at - HEADER) / (BYTES * BLOCK);
        held = block(index);
        heldFrom = HEADER + index * BYTES * BLOCK;
      }
    }
  }
}
