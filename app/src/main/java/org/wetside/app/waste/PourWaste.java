package org.wetside.app.waste;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.app.shelf.Emptying;
import org.wetside.core.bath.BathKind;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.safety.Objection;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.Poured;
import org.wetside.reference.CombinationRules;
import org.wetside.store.Batches;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;
import org.wetside.store.WasteBook;

/**
 * Pours used chemistry into a jug. What must not meet what is in the jug already is refused, with
 * both things, the reason and the source; so is what belongs into a jug of another kind.
 */
public final class PourWaste {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public PourWaste(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * What is poured by hand.
   *
   * @param contents as it stood on its bottle, for example {@code TF-3} or {@code wash water}
   * @param bath what it did to film; empty for what is no bath
   * @param volume above 0
   * @param note may be empty
   */
  public record ByHand(String contents, Optional<BathKind> bath, Volume volume, String note) {}

  /**
   * The jug afterwards.
   *
   * @param jug the jug
   * @param unknown what nothing is on file about, so that no combination could be judged
   */
  public record Outcome(FilledJug jug, List<String> unknown) {
    public Outcome {
      unknown = List.copyOf(unknown);
    }
  }

  /**
   * Pours by hand.
   *
   * @throws BadValueException when it must not meet what is there, belongs elsewhere or does not
   *     fit
   */
  public Outcome byHand(String jug, ByHand what) {
    return database
        .get()
        .inTransaction(
            session ->
                pour(
                    session,
                    jug,
                    new Poured(
                        0,
                        what.contents(),
                        what.bath(),
                        List.of(),
                        "",
                        what.volume(),
                        clock.instant().truncatedTo(ChronoUnit.MILLIS),
                        what.note())));
  }

  /**
   * Pours from a bottle of the shelf, and enters it in the bottle's ledger in the same transaction.
   *
   * @param volume how much; empty for all of it, and then the bottle is discarded
   * @throws BadValueException as {@link #byHand}, and when the bottle is not there or has less
   */
  public Outcome fromBottle(String jug, String letter, Optional<Volume> volume, String note) {
    return database.get().inTransaction(session -> fromBottle(session, jug, letter, volume, note));
  }

  /**
   * Empties bottles into a jug, as part of something greater that discards them.
   *
   * @param jug its name; the emptying is refused as {@link #fromBottle} when it cannot be
   */
  public Emptying into(String jug) {
    return new EmptyIntoJug(this, jug);
  }

  Outcome fromBottle(
      Session session, String jug, String letter, Optional<Volume> volume, String note) {
    Bottle bottle =
        new Bottles(session)
            .find(letter)
            .orElseThrow(
                () ->
                    new BadValueException(
                        "bottle", letter, "no bottle of that letter is on the shelf"));
    Outcome outcome =
        pour(session, jug, poured(session, bottle, volume.orElse(bottle.left()), note));
    String where = "into " + outcome.jug().jug().spoken();
    BottleEvent event =
        volume.isPresent() ? new BottleEvent.Taken(volume.get()) : new BottleEvent.Discarded();
    ChangeBottle.enter(session, bottle.label().letter(), where, event, clock);
    return outcome;
  }

  /**
   * Takes back a pouring that was not one; the line stays in the book. A bottle stays as it is.
   *
   * @param line number of the pouring
   * @param reason at least one word
   * @throws BadValueException when it is not in the jug
   */
  public FilledJug takeBack(String jug, long line, String reason) {
    if (reason.isBlank()) {
      throw new BadValueException("reason", reason, "say it in a word or two");
    }
    return database
        .get()
        .inTransaction(
            session -> {
              FilledJug before = KeepJugs.in(session, jug);
              if (before.inside().stream().noneMatch(one -> one.line() == line)) {
                throw new BadValueException(
                    "pouring",
                    String.valueOf(line),
                    "it is none of those in " + before.jug().spoken());
              }
              new WasteBook(session).takeBack(before.jug(), line, reason.strip(), clock.instant());
              return KeepJugs.in(session, jug);
            });
  }

  private Poured poured(Session session, Bottle bottle, Volume volume, String note) {
    if (bottle.left().compareTo(volume) < 0) {
      throw new BadValueException(
          "volume poured in",
          volume.toString(),
          "there are only " + bottle.left() + " in the bottle");
    }
    return new Poured(
        0,
        bottle.label().contents(),
        Optional.of(bottle.label().bath()),
        new Batches(session)
            .inBottle(bottle.label().letter())
            .map(batch -> batch.steps().stream().map(Batch.Step::ingredient).toList())
            .orElse(List.of()),
        bottle.label().letter(),
        volume,
        clock.instant().truncatedTo(ChronoUnit.MILLIS),
        note);
  }

  private static Outcome pour(Session session, String name, Poured poured) {
    FilledJug jug = KeepJugs.in(session, name);
    WasteMaterials materials = new WasteMaterials();
    Objection.requireNoneRefused(
        CombinationRules.open()
            .pouring(materials.of(poured), jug.inside().stream().map(materials::of).toList()));
    jug.requireTakes(poured.spoken(), poured.bath(), poured.volume());
    new WasteBook(session).pour(jug.jug(), poured);
    FilledJug after = KeepJugs.in(session, name);
    return new Outcome(after, materials.unknownIn(after));
  }
}
