package org.wetside.app.density;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.instrument.TabletStep;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;

/** The steps of a tablet as lines {@code step,density}. */
public final class TabletLines {
  private static final String HEADER = "step,density";

  private TabletLines() {}

  /**
   * Reads them whole or not at all.
   *
   * @throws BadValueException naming every bad line
   */
  public static List<TabletStep> parse(String text) {
    return new Lines("steps of the tablet", Set.of(HEADER)).read(text, TabletLines::step);
  }

  private static TabletStep step(String[] cells) {
    if (cells.length != 2) {
      throw new BadValueException(
          "step",
          String.join(",", cells),
          "two cells, step and density, for example 7,0.94 (decimal mark: a point)");
    }
    return new TabletStep(
        cells[0],
        OpticalDensity.of(
            TypedNumber.decimal("density of step " + cells[0].strip(), cells[1], "0.94")));
  }

  /** The same lines again, with their header. */
  public static String text(StepTablet tablet) {
    return tablet.steps().stream()
        .map(step -> step.label() + "," + step.density().value())
        .collect(Collectors.joining("\n", HEADER + "\n", "\n"));
  }
}
