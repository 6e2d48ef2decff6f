package org.wetside.app.trial;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.app.shelf.Today;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.LedgerRules;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialOutcome;
import org.wetside.reference.TestGuides;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;
import org.wetside.store.Trials;

/**
 * Stops the clock of a test and says what came of it. Where that speaks for or against a bottle,
 * its ledger gets a line in the same transaction.
 */
public final class JudgeTest {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public JudgeTest(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Judges a test that runs, now.
   *
   * @param reason in words: why nothing can be said, or what else was seen; may be empty
   * @return the test with its end; one that is over already as it ended, and nothing is changed
   * @throws BadValueException when there is no such test, it is judged before its time, or its
   *     bottle has left the shelf; the test goes on then
   */
  public Trial judge(long id, Sighting seen, String reason) {
    return database.inTransaction(
        session -> {
          Trial trial = known(session, id);
          if (!trial.isOpen()) {
            return trial;
          }
          Instant now = clock.instant();
          return end(session, trial, trial.elapsed(now), seen, reason, now);
        });
  }

  /**
   * Writes down a test of a bottle that was timed by other means.
   *
   * @param took how long it took; needed for a clearing time only
   * @throws BadValueException as {@link StartTest#of}, and when the time cannot be
   */
  public Trial made(
      String letter,
      TrialKind kind,
      Optional<ClipWish> clip,
      Duration took,
      Sighting seen,
      String reason) {
    return database.inTransaction(
        session -> {
          TestedBottle.require(session, letter, kind);
          Trials trials = new Trials(session);
          if (trials.openOf(letter).isPresent()) {
            throw new BadValueException(
                "test of bottle " + letter, kind.word(), "one still runs; judge it, or leave it");
          }
          Instant now = clock.instant();
          Optional<ClipWish> described = TestedBottle.clip(kind, clip);
          long id = trials.start(kind, letter, described, now.minus(took));
          return end(session, known(session, id), took, seen, reason, now);
        });
  }

  /** Writes down a test of washed film whose drop was left for its time. */
  public Trial madeOfFilm(List<String> rolls, Sighting seen, String reason) {
    Duration took = TestGuides.open().of(TrialKind.RESIDUE).leftFor().orElse(Duration.ZERO);
    return database.inTransaction(
        session -> {
          Instant now = clock.instant();
          long id =
              new Trials(session)
                  .startOfFilm(
                      TrialKind.RESIDUE, TestedFilm.require(session, rolls), now.minus(took));
          return end(session, known(session, id), took, seen, reason, now);
        });
  }

  private static Trial known(Session session, long id) {
    return new Trials(session)
        .find(id)
        .orElseThrow(() -> new BadValueException("test", "" + id, "there is none of that number"));
  }

  private Trial end(
      Session session, Trial trial, Duration took, Sighting seen, String reason, Instant now) {
    Trials trials = new Trials(session);
    String note = reason.strip();
    if (seen == Sighting.UNSURE) {
      String why = note.isEmpty() ? "left before it was judged" : note;
      trials.end(trial.id(), new TrialEnd(now, took, new TrialOutcome.NotJudged(why), ""));
      return known(session, trial.id());
    }
    Optional<Bottle> bottle =
        trial.kind().ofFilm() ? Optional.empty() : Optional.of(stillThere(session, trial));
    Judgement judgement = Judgement.of(trial, took, seen, bottle);
    trials.end(trial.id(), new TrialEnd(now, took, judgement.outcome(), note));
    if (bottle.isPresent()) {
      enter(session, trial, bottle.get(), judgement, note, now);
    }
    return known(session, trial.id());
  }

  private static Bottle stillThere(Session session, Trial trial) {
    Optional<Bottle> bottle = new Bottles(session).find(trial.bottle());
    if (bottle.isEmpty() || !new Trials(session).stillThere(trial.id())) {
      throw new BadValueException(
          "bottle", trial.bottle(), "it was discarded while the test ran; leave the test");
    }
    return bottle.get();
  }

  private void enter(
      Session session, Trial trial, Bottle bottle, Judgement judgement, String note, Instant now) {
    boolean failed = judgement.outcome() instanceof TrialOutcome.Failed;
    boolean passed =
        judgement.outcome() instanceof TrialOutcome.Passed
            || judgement.outcome() instanceof TrialOutcome.BaselineMade;
    if (!failed && !passed) {
      return;
    }
    Optional<Clearing> clearing = judgement.clearing();
    LedgerLine line =
        LedgerLine.byHand(
            now, note, new BottleEvent.Tested(TestedBottle.lineOf(trial.kind()), passed, clearing));
    LedgerRules.require(bottle, line, now, Today.of(clock));
    new Bottles(session).enter(trial.bottle(), line);
  }
}
