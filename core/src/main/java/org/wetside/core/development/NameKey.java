package org.wetside.core.development;

import java.util.ArrayList;
import java.util.List;

/**
 * A trade name reduced to what distinguishes it: letters and digits in lower case, so that {@code
 * T-Max 400}, {@code tmax 400} and {@code TMAX400} read alike.
 */
record NameKey(List<String> words) {
  static NameKey of(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (Character.isLetterOrDigit(letter)) {
        word.append(Character.toLowerCase(letter));
      } else if (Character.isWhitespace(letter) || "/,()".indexOf(letter) >= 0) {
        finish(word, words);
      }
    }
    finish(word, words);
    return new NameKey(List.copyOf(words));
  }

  private static void finish(StringBuilder word, List<String> words) {
    if (!word.isEmpty()) {
      words.add(word.toString());
      word.setLength(0);
    }
  }

  /** All words run together. */
  String joined() {
    return String.join("", words);
  }

  /**
   * Whether all words of the other are found here as whole words, run together or apart: {@code tri
   * x} is found in {@code trix 400}.
   */
  boolean hasWords(NameKey typed) {
    String wanted = typed.joined();
    if (wanted.isEmpty()) {
      return false;
    }
    for (int from = 0; from < words.size(); from++) {
      StringBuilder run = new StringBuilder();
      for (int to = from; to < words.size(); to++) {
        run.append(words.get(to));
        if (run.length() == wanted.length() && wanted.contentEquals(run)) {
          return true;
        }
      }
    }
    return words.containsAll(typed.words);
  }

  /** Edits that turn one name into the other (Levenshtein). */
  int distanceTo(NameKey other) {
    String a = joined();
    String b = other.joined();
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int substitute = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(substitute, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
