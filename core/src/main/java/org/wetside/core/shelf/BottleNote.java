package org.wetside.core.shelf;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person wrote on a bottle that a check understands: {@code test first}, {@code do not use},
 * {@code use by 2026-03-01}, and the dilution of a working solution, {@code 1+9}.
 *
 * @param text the note as it stands on the bottle
 */
public record BottleNote(String text) {
  private static final Pattern USE_BY =
      Pattern.compile("use by (\\d{4}-\\d{2}-\\d{2})", Pattern.CASE_INSENSITIVE);
  private static final Pattern DILUTION = Pattern.compile("\\b(\\d+) ?\\+ ?(\\d+)\\b");

  /** Whether it says to test first. */
  public boolean testFirst() {
    return text.toLowerCase(Locale.ROOT).contains("test first");
  }

  /** Whether it says not to use it. */
  public boolean doNotUse() {
    return text.toLowerCase(Locale.ROOT).contains("do not use");
  }

  /** The day until which it may be used, where one is written. */
  public Optional<LocalDate> useBy() {
    Matcher found = USE_BY.matcher(text);
    if (!found.find()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(found.group(1)));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** The dilution that is written on it, such as {@code 1+9}. */
  public Optional<String> dilution() {
    Matcher found = DILUTION.matcher(text);
    return found.find() ? Optional.of(found.group(1) + "+" + found.group(2)) : Optional.empty();
  }
}
