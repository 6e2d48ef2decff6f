package org.wetside.app.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.Load;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Hands;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.store.Bottles;

/**
 * The steps of a process as one load runs them: with the load's bottles, what each gives and gets
 * back, and the pour-in and drain times learned with the tank.
 *
 * @param steps in order
 * @param taken for each step what is taken from its bottle; empty for water, for light, and where
 *     the shelf does not say how the bottle's liquid is made ready
 */
record LoadSteps(List<Step> steps, List<Optional<Volume>> taken) {
  /** A developer is held this near to the temperature its time was found for (common practice). */
  private static final TemperatureDifference HELD = TemperatureDifference.ofKelvins(0.5);

  static LoadSteps of(Load load, FilmProcess process, Bottles bottles, Hands hands) {
    List<Step> steps = new ArrayList<>();
    List<Optional<Volume>> taken = new ArrayList<>();
    for (Step planned : process.steps()) {
      Optional<String> letter = letter(load, planned);
      Optional<Bottle> bottle = letter.flatMap(bottles::find);
      Step step = planned.kind().wet() ? withHands(planned, hands) : planned;
      if (planned.kind().developing()) {
        step = step.withBand(TemperatureRange.around(load.recipe().temperature(), HELD));
      }
      steps.add(step.withBottle(letter, afterUse(load, planned, letter, bottle)));
      taken.add(bottle.flatMap(from -> taken(load, planned, from)));
    }
    return new LoadSteps(steps, taken);
  }

  /** A drain as it was learned, but never longer than a short bath lasts. */
  private static Step withHands(Step planned, Hands hands) {
    Duration lead = hands.drain().orElse(planned.drainLead());
    Duration most = planned.duration().orElse(lead);
    return planned.withHands(
        hands.pourIn().orElse(planned.pourIn()), lead.compareTo(most) > 0 ? most : lead);
  }

  /** The load's own bottle for that bath, else the letter the process suggests. */
  private static Optional<String> letter(Load load, Step step) {
    if (step.kind().water() || !step.kind().wet()) {
      return Optional.empty();
    }
    return Optional.ofNullable(load.bottles().get(bath(step.kind()))).or(step::bottle);
  }

  private static AfterUse afterUse(
      Load load, Step planned, Optional<String> letter, Optional<Bottle> bottle) {
    if (bottle.isPresent()) {
      boolean back = !bottle.get().label().oneShot() && undiluted(load, bottle.get());
      return back ? AfterUse.backTo(bottle.get().label().letter()) : AfterUse.discard();
    }
    boolean goesBack = planned.afterUse().bottle().isPresent() && letter.isPresent();
    return goesBack ? AfterUse.backTo(letter.get()) : AfterUse.discard();
  }

  /** Whether what is poured is what is in the bottle, and may go back into it. */
  private static boolean undiluted(Load load, Bottle bottle) {
    BottleRole role = bottle.label().role();
    return role == BottleRole.WORKING
        || (role == BottleRole.STOCK
            && bottle.label().bath() == BathKind.DEVELOPER
            && load.recipe().dilution().label().equals("stock"));
  }

  private static Optional<Volume> taken(Load load, Step step, Bottle bottle) {
    if (bottle.label().role() == BottleRole.WORKING) {
      return Optional.of(load.fill());
    }
    if (!bottle.label().role().touchesFilm()) {
      return Optional.empty();
    }
    boolean developer = bath(step.kind()) == BathKind.DEVELOPER;
    return developer
        ? load.recipe().dilution().ratio().map(parts -> parts.concentrateIn(load.fill()))
        : Optional.empty();
  }

  /** What kind of bottle a step is poured from. */
  static BathKind bath(StepKind kind) {
    return switch (kind) {
      case DEVELOPER, TWO_BATH_A, TWO_BATH_B, MONOBATH, FIRST_DEVELOPER, SECOND_DEVELOPER ->
          BathKind.DEVELOPER;
      case STOP_BATH -> BathKind.STOP_BATH;
      case FIXER -> BathKind.FIXER;
      case WASH_AID -> BathKind.WASH_AID;
      case FINAL_RINSE, PRE_SOAK, RINSE, WASH, RE_EXPOSURE -> BathKind.FINAL_RINSE;
      case CLEARING_BATH -> BathKind.CLEARING_BATH;
      case BLEACH -> BathKind.BLEACH;
      case BLEACH_FIX -> BathKind.BLEACH_FIX;
      case CONDITIONER -> BathKind.CONDITIONER;
      case STABILISER -> BathKind.STABILISER;
      case HARDENER -> BathKind.HARDENER;
    };
  }
}
