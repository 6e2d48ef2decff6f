package org.wetside.core.shelf;

import java.util.Locale;
import org.wetside.core.bath.UnitOfUse;

/** Amounts of film in words. */
final class Rolls {
  private Rolls() {}

  /** For example {@code 7.5 rolls}. */
  static String of(UnitOfUse film) {
    String count = String.format(Locale.ROOT, "%.1f", film.rolls()).replaceFirst("\\.0$", "");
    return count + (count.equals("1") ? " roll" : " rolls");
  }
}
