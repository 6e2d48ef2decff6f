package org.wetside.core.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;

/**
 * A roll as its owner describes it, before the drawer gives it a number.
 *
 * @param number the owner's own number; empty to be given the next one
 * @param size its size
 * @param frames frames, or sheets; empty when not said
 * @param film the film as typed, 1 to 80 characters
 * @param kind kind of chemistry it is made for
 * @param exposureIndex index exposed at; empty when not said
 * @param title what is on it; may be empty, at most 200 characters
 * @param precious whether it must not fail
 * @param exposedOn the day it was exposed; empty when not said
 * @param note anything else; may be empty, at most 2000 characters
 * @param owner whose it is; may be empty, at most 80 characters
 */
public record RollDraft(
    Optional<String> number,
    FilmSize size,
    Optional<Integer> frames,
    String film,
    FilmKind kind,
    Optional<ExposureIndex> exposureIndex,
    String title,
    boolean precious,
    Optional<LocalDate> exposedOn,
    String note,
    String owner) {
  public RollDraft {
    number = number.map(RollNumber::require);
    frames.ifPresent(size::requireFrames);
    film = requireLength("film", film.strip(), 80);
    if (film.isEmpty()) {
      throw new BadValueException("film", film, "say which film it is, for example TRI-X 400");
    }
    title = requireLength("title", title.strip(), 200);
    note = requireLength("note", note.strip(), 2000);
    owner = requireLength("owner of a roll", owner.strip(), 80);
  }

  /** The same with another number. */
  public RollDraft withNumber(String other) {
    return new RollDraft(
        Optional.of(other),
        size,
        frames,
        film,
        kind,
        exposureIndex,
        title,
        precious,
        exposedOn,
        note,
        owner);
  }

  /** The same with another note. */
  public RollDraft withNote(String other) {
    return new RollDraft(
        number, size, frames, film, kind, exposureIndex, title, precious, exposedOn, other, owner);
  }

  /** The same, of another owner. */
  public RollDraft withOwner(String other) {
    return new RollDraft(
        number, size, frames, film, kind, exposureIndex, title, precious, exposedOn, note, other);
  }

  private static String requireLength(String thing, String text, int most) {
    if (text.length() > most) {
      throw new BadValueException(
          thing, text.substring(0, 20) + "…", "at most " + most + " characters");
    }
    return text;
  }
}
