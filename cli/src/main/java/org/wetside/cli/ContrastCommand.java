package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.ContrastTable;
import org.wetside.app.curves.FindContrastTime;
import org.wetside.web.curves.ContrastQuery;
import org.wetside.web.curves.ContrastView;
import org.wetside.web.curves.FitView;
import org.wetside.web.curves.MovedPointView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside contrast series.csv --aim 0.58}. */
@Command(
    name = "contrast",
    description = {
      "Say how long to develop for a contrast, from contrast against time.",
      "The series is a CSV with the header minutes,contrast and lines such as 6.5,0.58."
    })
final class ContrastCommand extends ViewCommand<ContrastView> {
  @Parameters(paramLabel = "FILE", arity = "0..1", description = "the series")
  @Nullable Path series;

  @Option(names = "--aim", paramLabel = "CONTRAST", description = "contrast wanted, as in 0.58")
  @Nullable String aim;

  @Override
  ContrastView answer() {
    return ContrastView.of(
        new FindContrastTime()
            .answer(
                ContrastTable.parse(CsvFile.text(series, "minutes,contrast")),
                new ContrastQuery(aim).gradient()));
  }

  @Override
  void print(ContrastView view, PrintWriter out) {
    out.printf(Locale.ROOT, "%s for a contrast of %.2f%n", clock(view.minutes()), view.aim());
    Double low = view.minutesBand().get(0);
    Double high = view.minutesBand().get(1);
    out.printf(
        "  nine in ten  %s to %s%n",
        low == null ? "open (the series may begin above it)" : clock(low),
        high == null ? "open (the series may end below it)" : clock(high));
    for (MovedPointView point : view.moved()) {
      out.printf(
          Locale.ROOT,
          "  Note: contrast fell at %s, where %.2f was read; it is levelled out%n",
          clock(point.minutes()),
          point.contrast());
    }
    print(view.fit(), view.fitRefused(), out);
  }

  private static void print(@Nullable FitView fit, @Nullable String refused, PrintWriter out) {
    if (fit == null) {
      out.println("  no exponential describes it: " + refused);
      return;
    }
    out.printf(
        Locale.ROOT,
        "  described by %.3f·(1 − exp(−%.4f·(t − %.2f))), t in minutes, residual %.3f%n",
        fit.limit(),
        fit.ratePerMinute(),
        fit.delayMinutes(),
        fit.residualSd());
    for (String warning : fit.warnings()) {
      out.println("  Note: " + warning);
    }
  }

  private static String clock(double minutes) {
    long seconds = Math.round(minutes * 60);
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
