package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.DriftReadings;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.web.mixing.DriftQuery;
import org.wetside.web.mixing.DriftView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside drift --readings r.csv --room 15C}. */
@Command(
    name = "drift",
    description = {
      "Say where a bath left alone is going.",
      "The readings are a CSV with the header elapsed,temp and lines such as 10:00,19.6C."
    })
final class DriftCommand extends ViewCommand<DriftView> {
  @Option(names = "--readings", paramLabel = "FILE", required = true, description = "the readings")
  @Nullable Path readings;

  @Option(
      names = "--room",
      paramLabel = "TEMP",
      description = "surroundings; without it three readings or more find them")
  @Nullable String room;

  @Option(
      names = "--aim",
      paramLabel = "TEMP",
      description = "say when the bath is at this temperature")
  @Nullable String aim;

  @Option(names = "--within", paramLabel = "DIFF", description = "half width of the band (0.5K)")
  @Nullable String within;

  @Option(names = "--from", paramLabel = "TIME", description = "beginning of a stretch (0:00)")
  @Nullable String from;

  @Option(names = "--to", paramLabel = "TIME", description = "its end: say the mean over it")
  @Nullable String to;

  @Option(names = "--ahead", paramLabel = "TIME", description = "say the temperature at this time")
  @Nullable String ahead;

  @Override
  DriftView answer() {
    DriftQuery query = new DriftQuery(room, aim, within, from, to, ahead);
    return DriftView.of(new PredictDrift().answer(query.question(DriftReadings.parse(text()))));
  }

  private String text() {
    if (readings == null) {
      throw new IllegalStateException("picocli asks for --readings");
    }
    try {
      return Files.readString(readings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  void print(DriftView view, PrintWriter out) {
    out.printf(
        "Towards %s (%s), time constant %s min%n",
        Metric.degrees(view.roomC()),
        view.roomFound() ? "found from the readings" : "the room as given",
        DriftView.clock(TimeSpan.ofSeconds(view.timeConstantSeconds())));
    if (view.inBand() != null) {
      out.println(view.inBand());
    }
    if (view.meanC() != null) {
      out.println("mean over the stretch: " + Metric.degrees(view.meanC()));
    }
    if (view.aheadC() != null) {
      out.println("then: " + Metric.degrees(view.aheadC()));
    }
    out.printf("%s; the readings lie within %.2f K of it%n", view.standing(), view.residualK());
  }
}
