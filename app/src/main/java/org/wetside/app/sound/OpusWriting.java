package org.wetside.app.sound;

import io.github.jaredmdobson.concentus.OpusApplication;
import io.github.jaredmdobson.concentus.OpusEncoder;
import io.github.jaredmdobson.concentus.OpusException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Encodes one track. Most of a run is silence: once the encoder has come to rest, the packet that
 * it repeats is written without asking it again.
 */
final class OpusWriting {
  private static final int FRAME = OpusPackets.FRAME;

  /** After so many silent frames with equal packets nothing is left of what was before. */
  private static final int AT_REST = 3;

  private static final int BITS_PER_SECOND = 40_000;
  private static final int COMPLEXITY = 5;
  private static final int LONGEST_PACKET = 1275;
  private static final int SERIAL = 0x57455453;

  private final CueTrack track;
  private final OggWriter ogg = new OggWriter(SERIAL);
  private final byte[] room = new byte[LONGEST_PACKET];
  private byte[] last = {};
  private int equal;

  OpusWriting(CueTrack track) {
    this.track = track;
  }

  byte[] bytes() {
    try {
      OpusEncoder encoder =
          new OpusEncoder(Sampling.RATE, 1, OpusApplication.OPUS_APPLICATION_RESTRICTED_LOWDELAY);
      encoder.setBitrate(BITS_PER_SECOND);
      encoder.setUseVBR(true);
      encoder.setComplexity(COMPLEXITY);
      int skip = encoder.getLookahead() * OpusPackets.PER_SAMPLE;
      headers(skip);
      long end = skip + track.samples() * OpusPackets.PER_SAMPLE;
      int perFrame = FRAME * OpusPackets.PER_SAMPLE;
      long frames = (end + perFrame - 1) / perFrame;
      for (long frame = 0; frame < frames; frame++) {
        ogg.packet(packet(encoder, frame), Math.min(end, (frame + 1) * perFrame));
      }
      ogg.endPage(true);
      return ogg.bytes();
    } catch (OpusException e) {
      throw new IllegalStateException("the track could not be encoded", e);
    }
  }

  private byte[] packet(OpusEncoder encoder, long frame) throws OpusException {
    if (!track.isSilent(frame * FRAME, FRAME)) {
      equal = 0;
    } else if (equal >= AT_REST) {
      return last;
    }
    short[] samples = track.read(frame * FRAME, FRAME);
    int length = encoder.encode(samples, 0, FRAME, room, 0, room.length);
    byte[] packet = Arrays.copyOf(room, length);
    equal = Arrays.equals(packet, last) ? equal + 1 : 0;
    last = packet;
    return packet;
  }

  /** RFC 7845, 5.1 and 5.2. */
  private void headers(int skip) {
    ByteBuffer head = ByteBuffer.allocate(19).order(ByteOrder.LITTLE_ENDIAN);
    head.put(ascii("OpusHead")).put((byte) 1).put((byte) 1).putShort((short) skip);
    head.putInt(Sampling.RATE).putShort((short) 0).put((byte) 0);
    ogg.packet(head.array(), 0);
    ogg.endPage(false);
    byte[] vendor = ascii("Wetside");
    ByteBuffer tags = ByteBuffer.allocate(16 + vendor.length).order(ByteOrder.LITTLE_ENDIAN);
    tags.put(ascii("OpusTags")).putInt(vendor.length).put(vendor).putInt(0);
    ogg.packet(tags.array(), 0);
    ogg.endPage(false);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
