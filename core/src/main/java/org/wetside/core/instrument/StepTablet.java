package org.wetside.core.instrument;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.quantity.BadValueException;

/**
 * A step tablet with densities of its own.
 *
 * @param name what it is called, 1 to 40 characters
 * @param origin where its densities come from, for example its sheet with number and day
 * @param steps at least two, each denser than the one before
 */
public record StepTablet(String name, String origin, List<TabletStep> steps) {
  /** Keeps an unmodifiable copy. */
  public StepTablet {
    name = ThingName.require(name, "name of the tablet");
    origin = origin.strip();
    if (origin.isEmpty()) {
      throw new BadValueException(
          "origin of the densities", "", "say where they come from, for example its sheet");
    }
    steps = List.copyOf(steps);
    if (steps.size() < 2) {
      throw new BadValueException("steps of the tablet", steps.size() + "", "at least two");
    }
    Set<String> labels = new HashSet<>();
    for (int i = 0; i < steps.size(); i++) {
      TabletStep step = steps.get(i);
      if (!labels.add(step.label().toLowerCase(Locale.ROOT))) {
        throw new BadValueException("step of the tablet", step.label(), "each label once");
      }
      if (i > 0 && step.density().compareTo(steps.get(i - 1).density()) <= 0) {
        throw new BadValueException(
            "density of step " + step.label(),
            String.valueOf(step.density().value()),
            "more than the "
                + steps.get(i - 1).density().value()
                + " of step "
                + steps.get(i - 1).label()
                + ": write the steps from clear to dense");
      }
    }
  }

  /** The step of that label, in any case. */
  public Optional<TabletStep> step(String label) {
    return steps.stream().filter(one -> one.label().equalsIgnoreCase(label.strip())).findFirst();
  }
}
