package org.wetside.app.mixing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.plan.Load;
import org.wetside.core.process.PlacedStep;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.process.Timeline;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.thermal.BathWanted;

/**
 * The baths of a load as they have to be at the sink: each once, however often it is poured.
 *
 * @param load the load
 * @param bottles by their letters
 * @param room what bottles have
 */
record LoadBaths(Load load, Function<String, Optional<Bottle>> bottles, Temperature room) {
  /** Farther from the developer than this risks reticulation (common practice). */
  private static final TemperatureDifference NEAR = TemperatureDifference.ofKelvins(3);

  /** In the order in which they are poured, the steps being those that the load runs. */
  List<BathWanted> of(List<Step> steps) {
    Map<String, BathWanted> baths = new LinkedHashMap<>();
    for (PlacedStep placed : Timeline.of(steps).steps()) {
      if (placed.step().kind().wet()) {
        baths.merge(name(placed.step()), bath(placed), (before, again) -> once(before));
      }
    }
    return List.copyOf(baths.values());
  }

  /** What the bath is called that the load's time is for; empty when none of them is. */
  static Optional<String> developer(List<Step> steps) {
    return steps.stream()
        .filter(step -> step.kind().developing() || step.kind() == StepKind.MONOBATH)
        .findFirst()
        .map(LoadBaths::name);
  }

  private static BathWanted once(BathWanted before) {
    return new BathWanted(
        before.name(),
        before.fills() + 1,
        before.volume(),
        before.target(),
        before.band(),
        before.pouredAfter(),
        before.made());
  }

  private static String name(Step step) {
    return step.kind().heading() + step.bottle().map(letter -> ", bottle " + letter).orElse("");
  }

  private BathWanted bath(PlacedStep placed) {
    Step step = placed.step();
    Temperature developer = load.recipe().temperature();
    TemperatureRange band = step.band().orElse(TemperatureRange.around(developer, NEAR));
    return new BathWanted(
        name(step), 1, load.fill(), nearest(band, developer), band, placed.begin(), made(step));
  }

  /** The developer's own temperature, or the nearest to it in the band. */
  private static Temperature nearest(TemperatureRange band, Temperature wanted) {
    return wanted.plus(band.outsideBy(wanted).times(-1));
  }

  private BathWanted.Making made(Step step) {
    if (step.kind().water()) {
      return new BathWanted.FromWater(Volume.ZERO, room);
    }
    Optional<Bottle> bottle = step.bottle().flatMap(bottles);
    if (bottle.filter(one -> one.label().role() == BottleRole.WORKING).isPresent()) {
      return new BathWanted.InBottle(room);
    }
    Optional<DilutionRatio> parts =
        step.kind().developing()
            ? load.recipe().dilution().ratio()
            : bottle.map(one -> one.label().dilution()).flatMap(LoadBaths::parts);
    return parts
        .filter(ratio -> ratio.waterParts() > 0)
        .<BathWanted.Making>map(
            ratio -> new BathWanted.FromWater(ratio.concentrateIn(load.fill()), room))
        .orElseGet(() -> new BathWanted.InBottle(room));
  }

  /** A label may say anything; what is no dilution says nothing of parts. */
  private static Optional<DilutionRatio> parts(String label) {
    try {
      return Dilution.parse(label).ratio();
    } catch (BadValueException otherWords) {
      return Optional.empty();
    }
  }
}
