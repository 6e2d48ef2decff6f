package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.web.curves.CurveView;
import org.wetside.web.curves.MovedView;
import org.wetside.web.curves.OutlierView;
import org.wetside.web.curves.RemarkView;

/** What a curve shows, in lines for people. */
final class CurveLines {
  private CurveLines() {}

  static void print(CurveView view, PrintWriter out) {
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
