package org.wetside.reference;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How names are found in what somebody wrote. */
final class WholeWords {
  private static final Pattern PERCENT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%");

  private WholeWords() {}

  /** The word with no letter directly before or after it. */
  static Pattern word(String word) {
    return whole(word, "[\\p{L}]");
  }

  /** The name with no letter, digit or dash directly before or after it: D-76 is not in D-76R. */
  static Pattern name(String name) {
    return whole(name, "[\\p{L}\\p{N}-]");
  }

  /** The strength that is written there. */
  static OptionalDouble percent(String text) {
    Matcher matcher = PERCENT.matcher(text);
    return matcher.find()
        ? OptionalDouble.of(Double.parseDouble(matcher.group(1).replace(',', '.')))
        : OptionalDouble.empty();
  }

  private static Pattern whole(String word, String kind) {
    return Pattern.compile(
        "(?<!" + kind + ")" + Pattern.quote(word) + "(?!" + kind + ")",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
