package org.wetside.core.process;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A saying in the words of a language, piece by piece: a voice may read the whole text, or play the
 * clip of each piece one after another.
 *
 * @param phrases in the order in which they are said
 */
public record Speech(List<Phrase> phrases) {
  /**
   * One piece.
   *
   * @param text as it is written, with its punctuation
   * @param clips names of the clips that say it, in order; empty when it is nothing to say
   */
  public record Phrase(String text, List<String> clips) {
    public Phrase {
      clips = List.copyOf(clips);
    }
  }

  public Speech {
    phrases = List.copyOf(phrases);
  }

  /** The whole as one sentence, for a voice that reads. */
  public String text() {
    return phrases.stream().map(Phrase::text).collect(Collectors.joining());
  }

  /** The clips of all pieces, one after another. */
  public List<String> clips() {
    return phrases.stream().flatMap(phrase -> phrase.clips().stream()).toList();
  }
}
