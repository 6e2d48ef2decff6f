package org.wetside.core.process;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a cue says to the ear, before it is put into the words of a language: which sentence, and
 * what stands in it.
 *
 * @param sentence key of the sentence in the file of words, for example {@code pour-from-bottle}
 * @param parts what fills its places, by their names: {@code bath} (a {@link StepKind#word()}),
 *     {@code letter} (of a bottle), {@code count} (a whole number), {@code seconds} (of a span)
 * @param tank name that is called first; empty when there is only one tank
 */
public record Saying(String sentence, Map<String, String> parts, String tank) {
  public Saying {
    parts = Map.copyOf(parts);
  }

  static Saying of(String sentence) {
    return new Saying(sentence, Map.of(), "");
  }

  Saying bath(StepKind kind) {
    return with("bath", kind.word());
  }

  Saying letter(String letter) {
    return with("letter", letter);
  }

  Saying count(int count) {
    return with("count", Integer.toString(count));
  }

  Saying span(Duration span) {
    return with("seconds", Long.toString(Math.round(span.toMillis() / 1000.0)));
  }

  Saying called(String name) {
    return new Saying(sentence, parts, name);
  }

  private Saying with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(parts);
    more.put(name, value);
    return new Saying(sentence, more, tank);
  }
}
