package org.wetside.core.instrument;

import java.util.List;
import java.util.OptionalDouble;
import org.wetside.core.sensitometry.NegativeKind;

/** A densitometer: what it shows stands; its steps only say how far off it is. */
final class ShownScale implements DensityScale {
  private final List<SeenStep> steps;

  ShownScale(List<SeenStep> steps) {
    this.steps = List.copyOf(steps);
  }

  @Override
  public PatchDensity densityOf(Seen seen, NegativeKind negative) {
    return seen instanceof SeenDensity shown
        ? new PatchDensity.Read(shown.density().value())
        : new PatchDensity.NotRead("a densitometer shows densities; it has no pixels to convert");
  }

  @Override
  public List<StepFit> fits() {
    return steps.stream()
        .map(
            step ->
                new StepFit(
                    step,
                    true,
                    step.seen() instanceof SeenDensity shown
                        ? OptionalDouble.of(shown.density().value() - step.density().value())
                        : OptionalDouble.empty()))
        .toList();
  }

  @Override
  public double clearest() {
    return steps.stream().mapToDouble(step -> step.density().value()).min().orElseThrow();
  }

  @Override
  public double densest() {
    return steps.stream().mapToDouble(step -> step.density().value()).max().orElseThrow();
  }
}
