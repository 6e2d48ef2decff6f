package org.wetside.web.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;

/** What a line of a ledger names, whatever kind it is. */
final class BookWords {
  private BookWords() {}

  /** The rolls that went through; empty for most lines. */
  static List<FilmUse> film(BottleEvent what) {
    return what instanceof BottleEvent.Used used ? used.film() : List.of();
  }

  /** What happened, with the rolls or the clearing time it names. */
  static String line(BottleEvent what) {
    List<String> rolls =
        film(what).stream().map(FilmUse::roll).filter(roll -> !roll.isEmpty()).toList();
    return what.word()
        + (rolls.isEmpty() ? "" : " for " + String.join(", ", rolls))
        + clearing(what)
            .map(
                clip ->
                    ", clear after "
                        + String.format(Locale.ROOT, "%.0f", clip.seconds())
                        + " s"
                        + (clip.baseline() ? " (fresh)" : ""))
            .orElse("");
  }

  /** The clearing time of a clip test, where one was taken. */
  static Optional<Clearing> clearing(BottleEvent what) {
    return what instanceof BottleEvent.Tested test ? test.clearing() : Optional.empty();
  }
}
