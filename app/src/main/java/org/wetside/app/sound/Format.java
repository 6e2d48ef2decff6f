package org.wetside.app.sound;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/** The kinds of file a track can be written as. */
public enum Format {
  /** Small: speech and tones in Opus, in an Ogg container (RFC 6716, RFC 7845). */
  OPUS("opus", "audio/ogg"),

  /** Large, and played by everything. */
  WAV("wav", "audio/wav");

  private final String ending;
  private final String mediaType;

  Format(String ending, String mediaType) {
    this.ending = ending;
    this.mediaType = mediaType;
  }

  /**
   * From the name of a file.
   *
   * @throws BadValueException when it ends otherwise
   */
  public static Format ofFile(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(format -> small.endsWith("." + format.ending))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException("file of the track", name, "its name ends in " + endings()));
  }

  private static String endings() {
    return Arrays.stream(values())
        .map(format -> "." + format.ending)
        .collect(Collectors.joining(" or "));
  }

  /** How the name of such a file ends, without the dot. */
  public String ending() {
    return ending;
  }

  /** Its media type. */
  public String mediaType() {
    return mediaType;
  }

  /** That track as such a file. */
  public SoundFile write(CueTrack track) {
    return this == OPUS ? OpusFile.of(track) : new WavFile(track);
  }
}
