package org.wetside.core.chemistry;

import java.util.Optional;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;

/**
 * One step of mixing.
 *
 * @param step the step of the formula
 * @param substance what goes in: as the formula says, or what stands in for it; empty when it is
 *     not on file or is water
 * @param exchange by which factor it stands in; empty when nothing is exchanged
 * @param mass what is weighed; empty for what is poured
 * @param volume what is measured; empty for what is weighed
 * @param weighing how it is weighed; empty for what is poured
 * @param reading in what it is measured; empty for what is weighed
 * @param water how warm the water is to be; empty when nothing is known
 */
public record PlannedStep(
    FormulaStep step,
    Optional<Substance> substance,
    Optional<Exchange.Allowed> exchange,
    Optional<Mass> mass,
    Optional<Volume> volume,
    Optional<Weighing> weighing,
    Optional<Measures.Reading> reading,
    Optional<TemperatureRange> water) {
  /** What goes in, by its name. */
  public String name() {
    return exchange.map(one -> one.held().name()).orElse(step.ingredient());
  }
}
