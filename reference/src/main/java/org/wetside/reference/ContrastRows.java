package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.development.ContrastSeries;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.sensitometry.ContrastPoint;

/** Contrast–time curves, one on each row. */
final class ContrastRows {
  /** What a digitised curve is good for (its transcriber's figure). */
  private static final double DIGITISED_SD = 0.005;

  private ContrastRows() {}

  static ContrastSeries series(CsvText.Line row) {
    ReferenceRow cited = new ReferenceRow(row);
    String vessel = row.cell("vessel");
    return new ContrastSeries(
        row.cell("id"),
        row.cell("film"),
        row.cell("developer"),
        Dilution.parse(row.cell("dilution")),
        temperature(row),
        vessel.equals("machine") ? Vessel.MACHINE : Vessel.parse(vessel),
        row.cell("measure"),
        points(row),
        cited.citation(),
        cited.standing());
  }

  private static Optional<Temperature> temperature(CsvText.Line row) {
    return row.cell("temperature").isEmpty()
        ? Optional.empty()
        : Optional.of(Temperature.parse(row.cell("temperature") + row.cell("temperature_unit")));
  }

  private static List<ContrastPoint> points(CsvText.Line row) {
    String[] times = row.cell("times").split("/", -1);
    String[] values = row.cell("values").split("/", -1);
    boolean digitised = row.cell("reading").equals("digitised");
    List<ContrastPoint> points = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      points.add(
          new ContrastPoint(
              Double.parseDouble(times[i]) * 60,
              Double.parseDouble(values[i]),
              digitised ? DIGITISED_SD : roundingSd(values[i])));
    }
    return points;
  }

  /** Half a last digit over √3: the standard deviation of rounding. */
  private static double roundingSd(String printed) {
    int decimals = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
    return 0.5 * Math.pow(10, -decimals) / Math.sqrt(3);
  }
}
