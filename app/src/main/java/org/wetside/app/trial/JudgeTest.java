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
          Instant now = clock.instant();
          Trial trial = begun(session, letter, kind, clip, now.minus(took));
          return end(session, trial, took, seen, reason, now);
        });
  }

  /**
   * Writes down a clip that was timed by other means, with what was thought of it. It passes only
   * by its time, held against the one in fresh solution: what cannot be compared is kept and
   * vouches for no roll. What was thought bad fails, whatever the time.
   *
   * @param passed what was thought
   * @param clip the time and how it was taken; a blank dilution is the usual one of the bottle
   * @throws BadValueException as {@link #made}, and for a fresh solution that is said to fail
   */
  public Trial clip(String letter, boolean passed, Clearing clip, String note) {
    if (!passed && clip.baseline()) {
      throw new BadValueException(
          "fixer of the clip", "fresh", "a fresh fixer that fails is no measure of later ones");
    }
    return database.inTransaction(
        session -> {
          Bottle bottle = TestedBottle.require(session, letter, TrialKind.CLEARING);
          String made = clip.dilution().isEmpty() ? UsualClip.dilution(bottle) : clip.dilution();
          ClipWish wish = new ClipWish(clip.film(), made, clip.temperature(), clip.baseline());
          Instant now = clock.instant();
          Trial trial =
              begun(session, letter, TrialKind.CLEARING, Optional.of(wish), now.minus(clip.time()));
          if (passed) {
            return end(session, trial, clip.time(), Sighting.GOOD, note, now);
          }
          Judgement bad = Judgement.thoughtBad(wish, clip.time());
          return end(session, trial, clip.time(), bad, note.strip(), now);
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

  private static Trial begun(
      Session session, String letter, TrialKind kind, Optional<ClipWish> clip, Instant at) {
    TestedBottle.require(session, letter, kind);
    Trials trials = new Trials(session);
    if (trials.openOf(letter).isPresent()) {
      throw new BadValueException(
          "test of bottle " + letter, kind.word(), "one still runs; judge it, or leave it");
    }
    return known(session, trials.start(kind, letter, TestedBottle.clip(kind, clip), at));
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
    return end(session, trial, took, Judgement.of(trial, took, seen, bottle), note, now);
  }

  private Trial end(
      Session session, Trial trial, Duration took, Judgement judgement, String note, Instant now) {
    new Trials(session).end(trial.id(), new TrialEnd(now, took, judgement.outcome(), note));
    if (!trial.kind().ofFilm()) {
      enter(session, trial, stillThere(session, trial), judgement, note, now);
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
    LedgerRules.require(bottle, line, Today.at(now));
    new Bottles(session).enter(trial.bottle(), line);
  }
}
