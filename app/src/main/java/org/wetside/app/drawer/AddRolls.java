package org.wetside.app.drawer;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.wetside.app.times.FindFilm;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollBatch;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollNumber;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/** Puts rolls into the drawer: one, or many at once; when one is wrong none is taken. */
public final class AddRolls {
  private final Supplier<Database> database;
  private final Clock clock;
  private final FindFilm films;

  /** In this home. */
  public AddRolls(Supplier<Database> database, Clock clock, FindFilm films) {
    this.database = database;
    this.clock = clock;
    this.films = films;
  }

  /**
   * Puts in what is written, one roll a line as {@link org.wetside.core.plan.RollLine} reads it.
   *
   * @throws BadValueException when there is no line at all
   */
  public AddOutcome lines(String text) {
    return database
        .get()
        .inTransaction(
            session -> {
              RollBatch batch = RollBatch.parse(text, new Rolls(session).numbers());
              if (batch instanceof RollBatch.Refused refused) {
                return new AddOutcome.Refused(refused.lines());
              }
              List<RollDraft> drafts = ((RollBatch.Good) batch).drafts();
              if (drafts.isEmpty()) {
                throw new BadValueException(
                    "roll",
                    text.strip(),
                    "write one roll a line, for example 135 36 TRI-X 400 @400 \"harbour\"");
              }
              return new AddOutcome.Kept(keep(session, drafts));
            });
  }

  /**
   * Puts in rolls that were described part by part.
   *
   * @throws BadValueException when a number is taken; then none is put in
   */
  public List<Roll> drafts(List<RollDraft> drafts) {
    return database
        .get()
        .inTransaction(
            session -> {
              Set<String> taken = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
              taken.addAll(new Rolls(session).numbers());
              for (RollDraft draft : drafts) {
                draft.number().ifPresent(number -> take(taken, number));
              }
              return keep(session, drafts);
            });
  }

  private static void take(Set<String> taken, String number) {
    if (!taken.add(number)) {
      throw new BadValueException("roll number", number, "there is already a roll of that number");
    }
  }

  private List<Roll> keep(Session session, List<RollDraft> drafts) {
    Rolls rolls = new Rolls(session);
    Set<String> taken = new TreeSet<>(rolls.numbers());
    drafts.forEach(draft -> draft.number().ifPresent(taken::add));
    String last = rolls.lastNumber().orElse("");
    Instant now = clock.instant();
    int year = LocalDate.ofInstant(now, clock.getZone()).getYear();
    List<Roll> kept = new ArrayList<>();
    for (RollDraft draft : drafts) {
      ExposureDay.refuseFuture(draft, clock);
      String before = last;
      last = draft.number().orElseGet(() -> RollNumber.following(before, year, taken));
      taken.add(last);
      Roll roll =
          new Roll(
              last,
              draft.withNumber(last),
              films.code(draft.film()),
              now,
              RollState.WAITING,
              Optional.empty());
      rolls.add(roll);
      new RollSearch(session).describe(roll);
      kept.add(roll);
    }
    return kept;
  }
}
