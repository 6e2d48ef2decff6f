package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.Temper;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.mixing.TemperQuery;
import org.wetside.web.mixing.TemperView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside temper --to 20C --total 1L --cold 9C --hot 50C}. */
@Command(name = "temper", description = "Say which waters to pour for a volume at a temperature.")
final class TemperCommand extends ViewCommand<TemperView> {
  @Option(names = "--to", paramLabel = "TEMP", description = "temperature wanted, for example 20C")
  @Nullable String to;

  @Option(names = "--total", paramLabel = "VOLUME", description = "volume wanted, for example 1L")
  @Nullable String total;

  @Option(names = "--cold", paramLabel = "TEMP", description = "the cold water, for example 9C")
  @Nullable String cold;

  @Option(names = "--hot", paramLabel = "TEMP", description = "the hot water, for example 50C")
  @Nullable String hot;

  @Option(
      names = "--ice",
      paramLabel = "TEMP",
      description = "a third water, from the ice-box; used when the others do not reach")
  @Nullable String ice;

  @Option(
      names = "--stock",
      paramLabel = "VOLUME@TEMP",
      description = "stock or concentrate that is part of the total, for example 300mL@18C")
  @Nullable String stock;

  @Option(
      names = "--vessel",
      paramLabel = "J/K@TEMP",
      description = "heat capacity and temperature of the vessel, for example 150J/K@15C")
  @Nullable String vessel;

  @Override
  TemperView answer() {
    TemperingQuestion question =
        new TemperQuery(to, total, cold, hot, ice, stock, vessel).question();
    return TemperView.of(question, new Temper().answer(question), Units.METRIC);
  }

  @Override
  void print(TemperView view, PrintWriter out) {
    out.println(Metric.volume(view.totalMl()) + " at " + Metric.degrees(view.targetC()));
    for (TemperView.PourView part : view.pour()) {
      out.printf(
          "  %-6s %s at %s%n",
          part.name(), Metric.volume(part.volumeMl()), Metric.degrees(part.temperatureC()));
    }
    if (view.stockMl() > 0) {
      out.printf(
          "  %-6s %s; the water alone has %s%n",
          "stock", Metric.volume(view.stockMl()), Metric.degrees(view.waterC()));
    }
    out.println(view.alternative());
    for (CautionView caution : view.cautions()) {
      out.println("Caution: " + caution.text());
    }
  }
}
