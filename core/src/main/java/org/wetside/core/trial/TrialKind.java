package org.wetside.core.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;

/** The tests of baths and of their work that are made at the Bench. */
public enum TrialKind {
  /** How long a clip of undeveloped film takes to clear in a fixer. */
  CLEARING("clearing", "Clearing time", BathKind.FIXER, BathKind.BLEACH_FIX),
  /** Whether exposed leader turns black in a developer, in room light. */
  LEADER("leader", "Leader test", BathKind.DEVELOPER),
  /** Whether iodide leaves a precipitate in a fixer. */
  IODIDE("iodide", "Iodide test", BathKind.FIXER),
  /** Whether washed film still holds thiosulfate; of film, not of a bottle. */
  RESIDUE("residue", "Residual thiosulfate");

  private final String word;
  private final String title;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of, so nothing changes it
  private final List<BathKind> baths;

  TrialKind(String word, String title, BathKind... baths) {
    this.word = word;
    this.title = title;
    this.baths = List.of(baths);
  }

  /** The word typed and stored. */
  public String word() {
    return word;
  }

  /** How it is headed. */
  public String title() {
    return title;
  }

  /** Whether it is made on washed film and not on a bottle. */
  public boolean ofFilm() {
    return baths.isEmpty();
  }

  /** Whether it is a test of a fixer: a failed one calls back the rolls that were fixed in it. */
  public boolean ofFixer() {
    return fits(BathKind.FIXER);
  }

  /** Whether it says something of a bath of that kind. */
  public boolean fits(BathKind bath) {
    return baths.contains(bath);
  }

  /** The tests of a bath, the one that is made first in front; none for most baths. */
  public static List<TrialKind> of(BathKind bath) {
    return Arrays.stream(values()).filter(kind -> kind.fits(bath)).toList();
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static TrialKind parse(String text) {
    String said = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(kind -> kind.word.equals(said))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "kind of test", text, "it is clearing, leader, iodide or residue"));
  }
}
