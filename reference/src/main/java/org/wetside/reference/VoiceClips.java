package org.wetside.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The spoken clips of a language, shipped with the program: one Ogg Opus file that holds all of
 * them, and where in it each one lies.
 *
 * @param language short name, for example {@code en}
 * @param places by the clip's name, see {@link SpokenWords#clipOf}
 */
public record VoiceClips(String language, Map<String, Place> places) {
  /**
   * Where a clip lies in the file.
   *
   * @param from its beginning
   * @param length how long it is
   */
  public record Place(Duration from, Duration length) {}

  public VoiceClips {
    places = Map.copyOf(places);
  }

  /**
   * The clips of a language.
   *
   * @throws IllegalArgumentException when it has none
   */
  public static VoiceClips in(String language) {
    Map<String, Place> places = new LinkedHashMap<>();
    for (CsvText.Line line : CsvText.read("voice/" + language + "-clips").lines()) {
      places.put(
          line.cell("clip"),
          new Place(millis(line.cell("from_ms")), millis(line.cell("length_ms"))));
    }
    return new VoiceClips(language, places);
  }

  /** Where that clip lies; empty when it was never spoken. */
  public Optional<Place> find(String clip) {
    return Optional.ofNullable(places.get(clip));
  }

  /** The Ogg Opus file with all clips. */
  public byte[] sound() {
    String name = "voice/" + language + ".opus";
    try (InputStream stream = VoiceClips.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program was built without " + name);
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Duration millis(String text) {
    return Duration.ofMillis(Long.parseLong(text));
  }
}
