package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.wash.PlanDrying;
import org.wetside.core.quantity.Units;
import org.wetside.web.wash.DryingQuery;
import org.wetside.web.wash.DryingView;
import org.wetside.web.wash.Figure;
import org.wetside.web.wash.WashQuery;
import org.wetside.web.wash.WashView;
import org.wetside.web.wash.WashesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside wash --method fills --volume 500mL --fills 6 --dwell 2min --start 60g/L}. */
@Command(name = "wash", description = "Foresee what a wash leaves on the film, and how it dries.")
final class WashCommand extends ViewCommand<Object> {
  @Option(
      names = "--method",
      paramLabel = "WAY",
      description = "fills, running, or a way on file such as changes-10 (used when not said)")
  @Nullable String method;

  @Option(names = "--all", description = "compare every way on file")
  boolean all;

  @Option(names = "--dry", description = "wetting agent and drying for that volume instead")
  boolean dry;

  @Option(names = "--volume", paramLabel = "VOLUME", description = "one fill, for example 500mL")
  @Nullable String volume;

  @Option(names = "--fills", paramLabel = "COUNT", description = "how many fills")
  @Nullable String fills;

  @Option(
      names = "--dwell",
      paramLabel = "TIME",
      description = "how long each fill stays, for example 2min; else only the rule of fills")
  @Nullable String dwell;

  @Option(names = "--flow", paramLabel = "FLOW", description = "running water, for example 1L/min")
  @Nullable String flow;

  @Option(names = "--minutes", paramLabel = "MIN", description = "how long the water runs")
  @Nullable String minutes;

  @Option(
      names = "--start",
      paramLabel = "G/L",
      description = "thiosulfate in the fixer, for example 60g/L")
  @Nullable String start;

  @Option(
      names = "--carry-over",
      paramLabel = "VOLUME",
      description = "what comes along with the film; 10 mL a roll when not said")
  @Nullable String carryOver;

  @Option(names = "--rolls", paramLabel = "N", description = "rolls in the tank; 1 when not said")
  @Nullable String rolls;

  @Option(
      names = "--temp",
      paramLabel = "TEMP",
      description = "temperature of the water; 20C when not said")
  @Nullable String temp;

  @Option(
      names = "--agent",
      paramLabel = "1+N",
      description = "with --dry: dilution as the bottle of wetting agent says")
  @Nullable String agent;

  @Option(names = "--hung", paramLabel = "HH:MM", description = "with --dry: when it is hung up")
  @Nullable String hung;

  @Override
  Object answer() {
    if (dry) {
      DryingQuery query = new DryingQuery(volume, agent, hung);
      return DryingView.of(
          new PlanDrying().answer(query.fill(), query.dilution()), query.hungAt(), Units.METRIC);
    }
    WashQuery query =
        new WashQuery(method, volume, fills, dwell, flow, minutes, start, carryOver, rolls, temp);
    return all
        ? WashesView.of(query.wish(), Units.METRIC)
        : WashView.of(query.answer(), Units.METRIC);
  }

  @Override
  void print(Object view, PrintWriter out) {
    if (view instanceof DryingView drying) {
      printDrying(drying, out);
    } else if (view instanceof WashesView washes) {
      for (WashView wash : washes.washes()) {
        out.println(wash.method() + ": " + takes(wash));
        out.println("  " + wash.text());
      }
    } else {
      printWash((WashView) view, out);
    }
  }

  private static void printWash(WashView wash, PrintWriter out) {
    out.println(wash.text());
    out.println(takes(wash));
    for (int fill = 0; fill < wash.fills(); fill++) {
      String rule = Figure.of(wash.equilibriumGramsPerLitre().get(fill));
      out.printf(
          "  %3d  %s%s%n",
          fill + 1,
          wash.standing() ? "rule of fills " + rule + " g/L; " : "",
          residues(wash, fill));
    }
    for (WashView.HalfTimeView one : wash.byHalfTime()) {
      out.printf(
          Locale.ROOT,
          "half-time %.0f s (%s): at least %s g/m²%s%n",
          one.halfTimeSeconds(),
          one.source(),
          Figure.of(one.residueGramsPerSquareMetre()),
          one.timesTheRule() == null
              ? ""
              : ", " + Figure.of(one.timesTheRule()) + " times what the rule of fills says");
    }
    wash.notes().forEach(note -> out.println("Note: " + note));
  }

  private static String residues(WashView wash, int fill) {
    StringBuilder text = new StringBuilder();
    if (wash.residueGramsPerSquareMetre() != null) {
      for (List<Double> residues : wash.residueGramsPerSquareMetre().values()) {
        text.append(text.isEmpty() ? "on the film at least " : " or ")
            .append(Figure.of(residues.get(fill)));
      }
      text.append(" g/m²");
    }
    return text.toString();
  }

  private static String takes(WashView wash) {
    String water = String.format(Locale.ROOT, "%.1f L of water", wash.waterMl() / 1000);
    return wash.ruleOnly()
        ? water
        : water + String.format(Locale.ROOT, ", %.0f min", wash.lengthSeconds() / 60);
  }

  private static void printDrying(DryingView drying, PrintWriter out) {
    out.println(drying.text());
    out.printf(
        "  %s: %s; times: %s%n", drying.dilution(), drying.dilutionStanding(), drying.source());
    for (DryingView.WayView way : drying.ways()) {
      out.printf(
          "%s: %s, %d to %d min, at most %s (%s, %s)%n",
          way.place(),
          way.words(),
          way.leastMinutes(),
          way.mostMinutes(),
          Metric.degrees(way.warmestC()),
          way.standing(),
          way.source());
      if (way.doNotTouchUntil() != null) {
        out.println("  do not touch until " + way.doNotTouchUntil());
      }
    }
  }
}
