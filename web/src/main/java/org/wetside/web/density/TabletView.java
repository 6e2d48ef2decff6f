package org.wetside.web.density;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.instrument.TabletStep;
import org.wetside.core.quantity.OpticalDensity;

/**
 * A step tablet over HTTP.
 *
 * @param name what it is called
 * @param origin where its densities come from
 * @param steps from clear to dense
 */
public record TabletView(
    @Nullable String name, @Nullable String origin, @Nullable List<StepBody> steps) {

  /** The view of a tablet. */
  public static TabletView of(StepTablet tablet) {
    return new TabletView(
        tablet.name(),
        tablet.origin(),
        tablet.steps().stream()
            .map(step -> new StepBody(step.label(), step.density().value()))
            .toList());
  }

  /**
   * The tablet that was sent.
   *
   * @throws org.wetside.core.quantity.BadValueException naming the part and its limit
   */
  public StepTablet tablet() {
    return new StepTablet(
        name == null ? "" : name,
        origin == null ? "" : origin,
        (steps == null ? List.<StepBody>of() : steps)
            .stream()
                .map(
                    one ->
                        new TabletStep(
                            one.step() == null ? "" : one.step(), OpticalDensity.of(one.density())))
                .toList());
  }
}
