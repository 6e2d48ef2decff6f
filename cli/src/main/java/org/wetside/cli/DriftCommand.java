package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.DriftReadings;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.web.bench.RunDrift;
import org.wetside.web.mixing.DriftQuery;
import org.wetside.web.mixing.DriftView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside drift --readings r.csv --room 15C}. */
@Command(
    name = "drift",
    description = {
      "Say where a bath left alone is going.",
      "The readings are a CSV with the header elapsed,temp and lines such as 10:00,19.6C,",
      "or those that the record of a run holds."
    })
final class DriftCommand extends HomeCommand<DriftView> {
  @Option(names = "--readings", paramLabel = "FILE", description = "the readings")
  @Nullable Path readings;

  @Option(
      names = "--run",
      paramLabel = "N",
      description = "number of a run whose readings they are")
  @Nullable Long run;

  @Option(
      names = "--step",
      paramLabel = "INDEX",
      description = "which bath of that run, from 0 (its developer)")
  @Nullable String step;

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
  Optional<DriftView> answerAnywhere() {
    if ((readings == null) == (run == null)) {
      throw new BadValueException(
          "readings",
          readings == null ? "not said" : "said twice",
          "give --readings FILE or --run N, one of the two");
    }
    return readings == null
        ? Optional.empty()
        : Optional.of(
            DriftView.of(new PredictDrift().answer(query().question(DriftReadings.parse(text())))));
  }

  @Override
  DriftView answerHere(Wetside wetside) {
    return RunDrift.of(wetside.bench().look(number()), step, query());
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/runs/" + number() + "/drift")
        .with("step", step)
        .with("room", room)
        .with("aim", aim)
        .with("within", within)
        .with("from", from)
        .with("to", to)
        .with("ahead", ahead);
  }

  @Override
  Class<DriftView> view() {
    return DriftView.class;
  }

  /** Looking at a run that goes on writes what is due in it. */
  @Override
  boolean writes() {
    return run != null;
  }

  private long number() {
    return Objects.requireNonNull(run, "--run");
  }

  private DriftQuery query() {
    return new DriftQuery(room, aim, within, from, to, ahead);
  }

  private String text() {
    if (readings == null) {
      throw new IllegalStateException("--readings is not there");
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
