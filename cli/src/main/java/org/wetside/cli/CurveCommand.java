package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.ReadCurve;
import org.wetside.app.curves.StepTable;
import org.wetside.web.curves.CurveQuery;
import org.wetside.web.curves.CurveView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside curve readings.csv --base-fog 0.25}. */
@Command(
    name = "curve",
    description = {
      "Say what speed and contrast the densities of a step tablet show.",
      "The readings are a CSV with the header logH,density and lines such as -2.40,0.35."
    })
final class CurveCommand extends ViewCommand<CurveView> {
  @Parameters(paramLabel = "FILE", arity = "0..1", description = "the readings")
  @Nullable Path readings;

  @Option(
      names = "--base-fog",
      paramLabel = "DENSITY",
      description = "of clear film, 0 for net densities; else found where the first steps are flat")
  @Nullable String baseFog;

  @Option(
      names = "--calibrated",
      description = "log H is in lux seconds of a calibrated light: the speed may be called ISO")
  boolean calibrated;

  @Override
  CurveView answer() {
    StepTable table = StepTable.parse(CsvFile.text(readings, "logH,density"));
    return CurveView.of(
        new ReadCurve().answer(new CurveQuery(baseFog, calibrated ? "yes" : "no").readings(table)));
  }

  @Override
  void print(CurveView view, PrintWriter out) {
    CurveLines.print(view, out);
  }
}
