package org.wetside.store;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wetside.core.plan.FilmKind;
import org.wetside.core.plan.FilmSize;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollState;

/** The rolls: those that wait, and those that were ever developed. Found by number, in any case. */
public final class Rolls {
  private final Session session;

  /** Works in this reading or transaction. */
  public Rolls(Session session) {
    this.session = session;
  }

  /** Puts a roll into the drawer; its number must be free. */
  public void add(Roll roll) {
    RollDraft said = roll.described();
    session.change(
        "INSERT INTO roll (number, format, frames, film, film_code, kind, exposure_index, title,"
            + " precious, exposed_on, note, owner, added_at, state, processed_at)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        roll.number(),
        said.size().word(),
        said.frames(),
        said.film(),
        roll.filmCode(),
        said.kind().word(),
        said.exposureIndex(),
        said.title(),
        said.precious(),
        said.exposedOn(),
        said.note(),
        said.owner(),
        roll.addedAt(),
        roll.state().word(),
        roll.processedAt());
  }

  /**
   * Writes a roll anew.
   *
   * @param number its number until now
   * @param roll what it is from now on; it may have another number
   */
  public void change(String number, Roll roll) {
    RollDraft said = roll.described();
    session.change(
        "UPDATE roll SET number = ?, format = ?, frames = ?, film = ?, film_code = ?, kind = ?,"
            + " exposure_index = ?, title = ?, precious = ?, exposed_on = ?, note = ?, owner = ?,"
            + " state = ?, processed_at = ? WHERE number = ?",
        roll.number(),
        said.size().word(),
        said.frames(),
        said.film(),
        roll.filmCode(),
        said.kind().word(),
        said.exposureIndex(),
        said.title(),
        said.precious(),
        said.exposedOn(),
        said.note(),
        said.owner(),
        roll.state().word(),
        roll.processedAt(),
        number);
  }

  /** One roll. */
  public Optional<Roll> find(String number) {
    return session.first("SELECT * FROM roll WHERE number = ?", Rolls::read, number.strip());
  }

  /** Rolls in one state, the longest there first. */
  public List<Roll> in(RollState state) {
    return session.list(
        "SELECT * FROM roll WHERE state = ?"
            + " ORDER BY coalesce(processed_at, exposed_on, added_at), number",
        Rolls::read,
        state.word());
  }

  /** Every number that was ever given, whatever became of the roll. */
  public Set<String> numbers() {
    return new TreeSet<>(session.list("SELECT number FROM roll", row -> row.text("number")));
  }

  /** The number that was given last; empty while no roll was ever there. */
  public Optional<String> lastNumber() {
    return session.first(
        "SELECT number FROM roll ORDER BY id DESC LIMIT 1", row -> row.text("number"));
  }

  /** The negatives are in their sleeve; the words say which sleeve or page, and may be empty. */
  public void file(String number, String sleeve) {
    session.change("UPDATE roll SET state = 'filed', sleeve = ? WHERE number = ?", sleeve, number);
  }

  /** Sleeve or page of a filed roll, in the words it was filed with; empty when there are none. */
  public String sleeve(String number) {
    return session
        .first("SELECT sleeve FROM roll WHERE number = ?", row -> row.text("sleeve"), number)
        .orElse("");
  }

  /** Moves rolls to another state. */
  public void move(Collection<String> numbers, RollState state) {
    for (String number : numbers) {
      session.change("UPDATE roll SET state = ? WHERE number = ?", state.word(), number);
    }
  }

  /** The rolls hang: to be called in the transaction that finishes their run. */
  public void markProcessed(Collection<String> numbers, Instant hungAt) {
    for (String number : numbers) {
      session.change(
          "UPDATE roll SET state = 'processed', processed_at = ? WHERE number = ?", hungAt, number);
    }
  }

  private static Roll read(Row row) {
    String number = row.text("number");
    return new Roll(
        number,
        new RollDraft(
            Optional.of(number),
            FilmSize.parse(row.text("format")),
            row.maybeWhole("frames").map(Long::intValue),
            row.text("film"),
            FilmKind.parse(row.text("kind")),
            row.maybeExposureIndex("exposure_index"),
            row.text("title"),
            row.yes("precious"),
            row.maybeDay("exposed_on"),
            row.text("note"),
            row.text("owner")),
        row.maybeText("film_code"),
        row.moment("added_at"),
        RollState.fromWord(row.text("state")),
        row.maybeMoment("processed_at"));
  }
}
