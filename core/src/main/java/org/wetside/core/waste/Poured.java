package org.wetside.core.waste;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * One pouring into a jug.
 *
 * @param line its number in the book of waste; 0 before it is stored
 * @param contents what it was, as it stood on its bottle
 * @param bath what it did to film; empty for what is no bath, such as wash water
 * @param ingredients what it was mixed from, where that is known; may be empty
 * @param bottle letter of the bottle it came from; empty when poured by hand
 * @param volume how much, above 0
 * @param at when
 * @param note in words; may be empty
 */
public record Poured(
    long line,
    String contents,
    Optional<BathKind> bath,
    List<String> ingredients,
    String bottle,
    Volume volume,
    Instant at,
    String note) {

  public Poured {
    contents = contents.strip();
    note = note.strip();
    ingredients = List.copyOf(ingredients);
    if (contents.isEmpty() || contents.length() > 60) {
      throw new BadValueException("what is poured in", contents, "1 to 60 characters");
    }
    if (volume.millilitres() <= 0) {
      throw new BadValueException("volume poured in", volume.toString(), "it must be above 0 mL");
    }
  }

  /** For example {@code TF-3 from bottle F}. */
  public String spoken() {
    return contents + (bottle.isEmpty() ? "" : " from bottle " + bottle);
  }

  /** Whether the figure for used fixer is about it. */
  public boolean isUsedFixer() {
    return bath.filter(kind -> WasteKind.of(kind) == WasteKind.SILVER).isPresent();
  }
}
