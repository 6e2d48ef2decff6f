package org.wetside.core.instrument;

import java.util.List;

/**
 * What a rectangle of a picture holds.
 *
 * @param patch the rectangle
 * @param pixels how many were counted, in each channel
 * @param channels grey alone, or red, green and blue
 */
public record PatchMeasure(PatchRectangle patch, long pixels, List<Channel> channels) {
  /** Keeps an unmodifiable copy. */
  public PatchMeasure {
    channels = List.copyOf(channels);
  }

  /**
   * One channel.
   *
   * @param name grey, red, green or blue
   * @param mean of its values, 0 to 65535
   * @param sd their standard deviation; 0 for one pixel
   * @param atZero how many are 0: light too weak to be told from none
   * @param atFull how many are 65535: light cut off
   */
  public record Channel(String name, double mean, double sd, long atZero, long atFull) {
    /** How many pixels say nothing of the light. */
    public long clipped() {
      return atZero + atFull;
    }
  }

  /** The means. */
  public Means means() {
    return new Means(channels.stream().map(Channel::mean).toList());
  }

  /** The channel that is measured: grey, or green. */
  public Channel measured() {
    return channels.size() == 1 ? channels.get(0) : channels.get(1);
  }
}
