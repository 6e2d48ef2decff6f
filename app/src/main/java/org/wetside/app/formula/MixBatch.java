package org.wetside.app.formula;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.shelf.AddBottle;
import org.wetside.app.shelf.Today;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.store.Batches;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** Mixes a batch: begun, ticked off step by step with what really went in, put into a bottle. */
public final class MixBatch {
  private static final int MOST_LISTED = 100;

  /** What goes in may be off by that factor before it is taken for a slip. */
  private static final double SLIP = 10;

  private final Supplier<Database> database;
  private final Clock clock;
  private final WeighOut weighOut;

  /** In this home. */
  public MixBatch(Supplier<Database> database, Clock clock, WeighOut weighOut) {
    this.database = database;
    this.clock = clock;
    this.weighOut = weighOut;
  }

  /** The newest hundred, newest first. */
  public List<Batch> all() {
    return database.get().read(session -> new Batches(session).newest(MOST_LISTED));
  }

  /** The one of that number. */
  public Optional<Batch> find(long id) {
    return database.get().read(session -> new Batches(session).find(id));
  }

  /** The one in the bottle of that letter. */
  public Optional<Batch> inBottle(String letter) {
    return database.get().read(session -> new Batches(session).inBottle(letter));
  }

  /**
   * Begins one.
   *
   * @throws BadValueException when the formula cannot be mixed so
   */
  public Batch begin(WeighOut.Question question) {
    WeighOut.Answer answer = weighOut.answer(question);
    if (answer.plan().isEmpty()) {
      throw new BadValueException(
          "formula to mix",
          answer.formula().code(),
          answer.formula().refusal().orElse("it cannot be mixed"));
    }
    Batch planned = BatchDraft.of(answer, clock.instant());
    return database
        .get()
        .inTransaction(
            session -> {
              Batches batches = new Batches(session);
              return batches.find(batches.add(planned)).orElseThrow();
            });
  }

  /**
   * A step is done.
   *
   * @param amount what really went in, for example {@code 140.1g} or {@code 70mL}
   * @throws BadValueException when there is no such step, or the amount is a slip of the decimal
   *     point
   */
  public Batch done(long id, int position, String amount) {
    return database
        .get()
        .inTransaction(
            session -> {
              Batch.Step step = step(session, id, position);
              Optional<Mass> weighed = step.mass().map(planned -> weighed(step, planned, amount));
              Optional<Volume> measured =
                  weighed.isPresent()
                      ? Optional.empty()
                      : step.volume().map(planned -> measured(step, planned, amount));
              return marked(session, id, position, weighed, measured, true);
            });
  }

  /** It was not done after all. */
  public Batch undone(long id, int position) {
    return database
        .get()
        .inTransaction(
            session -> {
              step(session, id, position);
              return marked(session, id, position, Optional.empty(), Optional.empty(), false);
            });
  }

  /**
   * It is in the bottle of that letter.
   *
   * @throws BadValueException when a step is left, it stands in a bottle already, no such bottle is
   *     on the shelf, or what is in that one cannot be of this batch
   */
  public Batch fill(long id, String letter) {
    return database
        .get()
        .inTransaction(
            session -> {
              Batch batch = require(session, id);
              checkMixed(batch);
              checkNotBottled(batch);
              Optional<Bottle> bottle = new Bottles(session).find(letter);
              bottle.ifPresent(found -> checkHolds(batch, found));
              if (bottle.isEmpty() || !new Batches(session).fill(id, letter)) {
                throw new BadValueException(
                    "bottle", letter, "no bottle of that letter is on the shelf");
              }
              return require(session, id);
            });
  }

  /**
   * It goes into a bottle that is new on the shelf: both or neither, in one transaction.
   *
   * @param label what stands on the bottle; the day of mixing and the batch are written by this
   * @throws BadValueException when a step is left, it stands in a bottle already, or the shelf
   *     refuses the bottle
   */
  public Batch bottle(long id, BottleLabel label) {
    return database
        .get()
        .inTransaction(
            session -> {
              Batch batch = require(session, id);
              checkMixed(batch);
              checkNotBottled(batch);
              Volume holds = label.full();
              AddBottle.add(
                  session,
                  label
                      .withDays(Optional.of(Today.of(clock)), Optional.empty())
                      .withBatch(String.valueOf(id)),
                  batch.total().compareTo(holds) > 0 ? holds : batch.total(),
                  clock);
              new Batches(session).fill(id, label.letter());
              return require(session, id);
            });
  }

  private static void checkNotBottled(Batch batch) {
    batch
        .bottle()
        .ifPresent(
            letter -> {
              throw new BadValueException(
                  "batch",
                  String.valueOf(batch.id()),
                  "it stands in bottle "
                      + letter
                      + " already; a rest goes into a new bottle that says batch "
                      + batch.id());
            });
  }

  private static void checkHolds(Batch batch, Bottle bottle) {
    String letter = bottle.label().letter();
    if (bottle.left().compareTo(batch.total()) > 0) {
      throw new BadValueException(
          "volume in bottle " + letter,
          bottle.left().toString(),
          "the batch makes only " + batch.total());
    }
    if (bottle.film().rolls() > 0) {
      throw new BadValueException(
          "bottle", letter, "film has gone through it already, so it is not this batch");
    }
  }

  /**
   * Refuses one of which something is left to do.
   *
   * @throws BadValueException naming the step that is next
   */
  private static void checkMixed(Batch batch) {
    batch
        .next()
        .ifPresent(
            step -> {
              throw new BadValueException(
                  "batch",
                  String.valueOf(batch.id()),
                  "it is not mixed yet: next is " + step.ingredient());
            });
  }

  private Batch marked(
      Session session,
      long id,
      int position,
      Optional<Mass> weighed,
      Optional<Volume> measured,
      boolean done) {
    new Batches(session)
        .mark(
            id,
            position,
            weighed,
            measured,
            done ? Optional.of(clock.instant()) : Optional.empty());
    return require(session, id);
  }

  private static Mass weighed(Batch.Step step, Mass planned, String amount) {
    Mass mass = Mass.parse(isBare(amount) ? amount + "g" : amount);
    checkSlip(step, mass.toString(), planned.toString(), mass.ratioTo(planned));
    return mass;
  }

  private static Volume measured(Batch.Step step, Volume planned, String amount) {
    Volume volume = Volume.parse(isBare(amount) ? amount + "mL" : amount);
    checkSlip(step, volume.toString(), planned.toString(), volume.ratioTo(planned));
    return volume;
  }

  private static void checkSlip(Batch.Step step, String given, String planned, double ratio) {
    if (ratio < 1 / SLIP || ratio > SLIP) {
      throw new BadValueException(
          "amount of " + step.ingredient(),
          given,
          "between a tenth of and ten times the planned " + planned);
    }
  }

  private static boolean isBare(String amount) {
    String text = amount.strip();
    return !text.isEmpty() && "0123456789.".indexOf(text.charAt(text.length() - 1)) >= 0;
  }

  private static Batch require(Session session, long id) {
    return new Batches(session)
        .find(id)
        .orElseThrow(
            () -> new BadValueException("batch", String.valueOf(id), "there is no such batch"));
  }

  private static Batch.Step step(Session session, long id, int position) {
    return require(session, id).steps().stream()
        .filter(one -> one.position() == position)
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "step of the batch", String.valueOf(position), "batch " + id + " has none"));
  }
}
