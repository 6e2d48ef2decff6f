package org.wetside.web.page;

import java.util.List;

/** How many of a thing, as a sentence begins or goes on: words up to ten, figures above. */
public final class Count {
  private static final List<String> WORDS =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  private Count() {}

  /** For example {@code One roll}, {@code Four rolls}, {@code 12 rolls}. */
  public static String of(long count, String thing) {
    return of(count, thing, thing + "s");
  }

  /** The same where the plural is not an s at the end. */
  public static String of(long count, String one, String many) {
    return word(count) + " " + (count == 1 ? one : many);
  }

  /** The number alone. */
  public static String word(long count) {
    return count < WORDS.size() ? WORDS.get((int) count) : Long.toString(count);
  }

  /** Inside a sentence. */
  public static String inside(long count, String thing) {
    String words = of(count, thing);
    return Character.toLowerCase(words.charAt(0)) + words.substring(1);
  }
}
