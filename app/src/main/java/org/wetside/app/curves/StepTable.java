package org.wetside.app.curves;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.StepReading;

/**
 * Readings of a curve as a CSV text with the header {@code logH,density}: log10 of lux seconds and
 * the density read there, net or gross.
 *
 * @param readings in the order of the lines
 * @param densityStep to what the densities are rounded, by the digits they are written with [-]
 */
public record StepTable(List<StepReading> readings, double densityStep) {
  private static final double COARSEST = 0.1;

  public StepTable {
    readings = List.copyOf(readings);
  }

  /**
   * Reads the text whole or not at all.
   *
   * @throws BadValueException naming every bad line
   */
  public static StepTable parse(String csv) {
    List<StepReading> readings = new ArrayList<>();
    int[] decimals = {0};
    new NumberTable("logH", "density", "-2.40,0.35")
        .read(
            csv,
            (logH, density) -> {
              readings.add(
                  StepReading.of(
                      NumberTable.number("log exposure", logH, "-2.40"),
                      NumberTable.number("density", density, "0.35")));
              decimals[0] = Math.max(decimals[0], NumberTable.decimals(density));
            });
    return new StepTable(readings, Math.min(COARSEST, Math.pow(10, -decimals[0])));
  }
}
