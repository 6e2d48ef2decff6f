package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.ReadCurve;
import org.wetside.app.curves.StepTable;
import org.wetside.web.curves.CurveQuery;
import org.wetside.web.curves.CurveView;
import org.wetside.web.curves.MovedView;
import org.wetside.web.curves.OutlierView;
import org.wetside.web.curves.RemarkView;
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
    out.println(headline(view));
    line(out, "log Hm", view.logHm(), view.logHmBand(), 2, " log10 lx·s");
    line(out, "ΔD", view.deltaD(), view.deltaDBand(), 2, ", contrast of ISO 6 " + view.contrast());
    line(out, "average gradient", view.averageGradient(), view.averageGradientBand(), 2, "");
    line(out, "contrast index", view.contrastIndex(), view.contrastIndexBand(), 2, "");
    line(out, "gamma", view.gamma(), view.gammaBand(), 2, "");
    line(out, "exposure index", view.exposureIndex(), view.exposureIndexBand(), 0, "");
    line(out, "speed by ΔX", view.speedDeltaX(), view.speedDeltaXBand(), 0, ", from memory");
    out.printf(
        Locale.ROOT,
        "Base plus fog %.2f%s, %d steps%n",
        view.baseFog(),
        view.baseFogFound() ? " (found in the first steps)" : "",
        view.steps());
    for (MovedView step : view.moved()) {
      out.printf(
          Locale.ROOT,
          "  Note: at log H %.2f the densities fell; %.2f is taken for the %.2f read%n",
          step.logH(),
          step.taken(),
          step.read());
    }
    for (OutlierView step : view.outliers()) {
      out.printf(
          Locale.ROOT,
          "  Note: read the step at log H %.2f again: %.2f where a smooth curve has %.2f%n",
          step.logH(),
          step.read(),
          step.expected());
    }
    for (RemarkView remark : view.remarks()) {
      out.println("  Note: " + remark.of() + ": " + remark.reason());
    }
  }

  private static String headline(CurveView view) {
    if (view.isoSpeed() != null && view.isoDegrees() != null) {
      return String.format(
          Locale.ROOT,
          "ISO %s/%d°, contrast %s",
          plain(view.isoSpeed()),
          view.isoDegrees(),
          view.contrast());
    }
    return view.exposureIndex() == null
        ? "The speed is not determinable"
        : String.format(
            Locale.ROOT, "Exposure index %.0f, fixed density 0.10", view.exposureIndex());
  }

  private static String plain(double speed) {
    return speed == Math.rint(speed) ? String.valueOf((long) speed) : String.valueOf(speed);
  }

  private static void line(
      PrintWriter out,
      String name,
      @Nullable Double value,
      @Nullable List<Double> band,
      int decimals,
      String after) {
    String form = "%." + decimals + "f";
    String text = value == null ? "not determinable" : String.format(Locale.ROOT, form, value);
    if (band != null) {
      text +=
          String.format(Locale.ROOT, " (" + form + " to " + form + ")", band.get(0), band.get(1));
    }
    out.printf(Locale.ROOT, "  %-17s %s%s%n", name, text, after);
  }
}
