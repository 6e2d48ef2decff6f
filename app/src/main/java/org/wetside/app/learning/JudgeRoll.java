package org.wetside.app.learning;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.drawer.ReadRecord;
import org.wetside.app.drawer.RollRecord;
import org.wetside.app.plan.RollTimes;
import org.wetside.app.times.AskMakersTime;
import org.wetside.app.times.AskMakersTime.Makers;
import org.wetside.core.learning.Developed;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.Lessons;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.Used;
import org.wetside.core.plan.FilmKind;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.RunCard;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Judgements;
import org.wetside.store.Tanks;

/** Judges the negatives of a roll, and takes a judgement back. */
public final class JudgeRoll {
  private static final int LONGEST = 80;
  private static final Used NOTHING = new Used("", "", "");

  private final Supplier<Database> database;
  private final Clock clock;
  private final ReadRecord records;

  JudgeRoll(Supplier<Database> database, Clock clock, ReadRecord records) {
    this.database = database;
    this.clock = clock;
    this.records = records;
  }

  /**
   * What there is to judge by.
   *
   * @param judgeable why it cannot be judged; empty when it can
   * @param used what its record says was used; what it does not say is taken from the roll judged
   *     last
   * @param earlier the judgement that counts now
   */
  public record Ready(Optional<String> judgeable, Used used, Optional<Judgement> earlier) {}

  /** What a roll can be judged by; for a roll that cannot be, the reason. */
  public Ready ready(RollRecord record) {
    Optional<Judgement> earlier = now(record.roll().number());
    return new Ready(
        whyNot(record),
        earlier.map(Judgement::used).orElseGet(() -> used(RunFacts.of(record))),
        earlier);
  }

  /** The judgement of a roll that counts. */
  public Optional<Judgement> now(String number) {
    return database.get().read(session -> new Judgements(session).of(number));
  }

  /**
   * Keeps what was seen on a roll, in the place of an earlier judgement.
   *
   * @param said what may have made it differ; a part that is null in words, or the whole when
   *     empty, is taken from the record
   * @return the roll with what it says
   * @throws BadValueException when there is no such roll, or words are too long
   * @throws CannotDoException when it is not developed, or is no black-and-white film
   */
  public Lesson.Told judge(String number, Seen seen, Optional<Used> said) {
    RollRecord record = require(number);
    whyNot(record)
        .ifPresent(
            why -> {
              throw new CannotDoException(why);
            });
    RunFacts facts = RunFacts.of(record).orElseThrow();
    Used used = said.orElseGet(() -> used(Optional.of(facts)));
    check("water", used.water());
    check("thermometer", used.thermometer());
    check("bottle and batch", used.batch());
    Roll roll = record.roll();
    Makers makers = makers(roll, facts);
    Judgement judgement =
        new Judgement(
            0,
            roll.number(),
            makers
                .of()
                .orElseGet(
                    () ->
                        new FilmInDeveloper(
                            roll.filmCode().orElse(roll.described().film()),
                            facts.ran().card().developer())),
            makers.film(),
            roll.described().exposureIndex(),
            clock.instant(),
            seen,
            new Developed(
                facts.endedAt(),
                facts.lasted(),
                makers.time(),
                makers.source(),
                makers.contrast(),
                makers.whyNoContrast()),
            used);
    Judgement kept =
        database.get().inTransaction(session -> new Judgements(session).keep(judgement));
    return told(kept);
  }

  /**
   * Takes the judgement of a roll back; it counts no more.
   *
   * @return what it said
   * @throws BadValueException when there is no such roll
   * @throws CannotDoException when it was not judged
   */
  public Lesson.Told takeBack(String number) {
    String roll = require(number).roll().number();
    Lesson.Told told =
        now(roll)
            .map(this::told)
            .orElseThrow(
                () ->
                    new CannotDoException(
                        "Roll " + roll + " is not judged: nothing was taken back."));
    boolean unused =
        database
            .get()
            .inTransaction(session -> new Judgements(session).takeBack(roll, clock.instant()));
    return told;
  }

  /** What the judgement of a roll says that counts now. */
  public Optional<Lesson.Told> toldNow(String number) {
    return now(number).map(this::told);
  }

  private Lesson.Told told(Judgement kept) {
    List<Judgement> all = database.get().read(session -> new Judgements(session).all());
    return Lessons.from(all, FiguresOnFile.RULES).of(kept.of()).orElseThrow().rolls().stream()
        .filter(told -> told.roll().id() == kept.id())
        .findFirst()
        .orElseThrow();
  }

  private static Optional<String> whyNot(RollRecord record) {
    Roll roll = record.roll();
    if (!roll.state().isDeveloped()) {
      return Optional.of(
          "Roll "
              + roll.number()
              + " is "
              + roll.state().word()
              + ": there are no negatives to judge yet.");
    }
    if (roll.described().kind() != FilmKind.BLACK_AND_WHITE) {
      return Optional.of(
          "Roll "
              + roll.number()
              + " is "
              + roll.described().kind().word()
              + ": only silver negatives are learned from.");
    }
    return RunFacts.of(record).isEmpty()
        ? Optional.of(
            "Roll "
                + roll.number()
                + " was in no run with a single developer: there is nothing to compare it with.")
        : Optional.empty();
  }

  private Makers makers(Roll roll, RunFacts facts) {
    RunCard card = facts.ran().card();
    String film = roll.described().film();
    if (roll.described().exposureIndex().isEmpty()) {
      return Makers.none(film, "which index it was exposed at is not said");
    }
    if (card.temperature().isEmpty()) {
      return Makers.none(film, "the planned temperature is not recorded");
    }
    Optional<Tank> tank = database.get().read(session -> new Tanks(session).find(card.tank()));
    if (tank.isEmpty()) {
      return Makers.none(film, "tank " + card.tank() + " does not stand under Equipment any more");
    }
    Recipe recipe = new Recipe(card.developer(), card.dilution(), card.temperature().get());
    return new AskMakersTime(database)
        .of(RollTimes.request(roll, recipe, tank.get(), facts.steps()));
  }

  private Used used(Optional<RunFacts> facts) {
    List<Judgement> judged = database.get().read(session -> new Judgements(session).all());
    Used last = judged.isEmpty() ? NOTHING : judged.get(judged.size() - 1).used();
    String thermometer = facts.map(RunFacts::thermometer).orElse("");
    String batch = facts.flatMap(RunFacts::bottle).map(this::batch).orElse("");
    return new Used("", thermometer, batch).after(new Used(last.water(), "", ""));
  }

  /** Letter, batch and day of mixing, as far as they are known: {@code D, mixed 2026-01-10}. */
  private String batch(String letter) {
    return database
        .get()
        .read(session -> new Bottles(session).findLast(letter))
        .map(
            bottle ->
                letter
                    + (bottle.label().batch().isEmpty() ? "" : ", " + bottle.label().batch())
                    + bottle.label().mixedOn().map(day -> ", mixed " + day).orElse(""))
        .orElse(letter);
  }

  private static void check(String thing, String words) {
    if (words.length() > LONGEST) {
      throw new BadValueException(thing, words, "at most " + LONGEST + " characters");
    }
  }

  private RollRecord require(String number) {
    return records
        .of(number)
        .orElseThrow(
            () -> new BadValueException("roll", number, "there is no roll of that number"));
  }
}
