package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.web.process.CuesQuery;
import org.wetside.web.process.CuesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside cues small-tank --development 9:00}. */
@Command(name = "cues", description = "List every cue of a process or a load, by the clock.")
final class CuesCommand extends HomeCommand<CuesView> {
  private static final int SECONDS_PER_MINUTE = 60;

  @Parameters(
      paramLabel = "PROCESS|LOAD",
      description = "short name of a process such as small-tank, or the number of a load")
  @Nullable String what;

  @Option(
      names = "--development",
      paramLabel = "TIME",
      description = "how long the developer stays, for example 9:00")
  @Nullable String development;

  @Override
  CuesView answerHere(Wetside wetside) {
    return CuesView.of(CuesQuery.typed(what, development).answer(wetside.showCues()));
  }

  @Override
  ServerRequest request() {
    CuesQuery query = CuesQuery.typed(what, development);
    return ServerRequest.get("/api/cues")
        .with("process", query.process())
        .with("load", query.load())
        .with("development", query.development());
  }

  @Override
  Class<CuesView> view() {
    return CuesView.class;
  }

  @Override
  void print(CuesView view, PrintWriter out) {
    out.println(view.name() + ", " + clock(view.totalSeconds()) + " in all");
    for (CuesView.CueLineView cue : view.cues()) {
      String at = clock(cue.atSeconds());
      out.println(" ".repeat(Math.max(0, 8 - at.length())) + at + "  " + cue.text());
    }
  }

  private static String clock(double seconds) {
    long whole = Math.round(Math.abs(seconds));
    long rest = whole % SECONDS_PER_MINUTE;
    return (seconds < 0 ? "-" : "") + whole / SECONDS_PER_MINUTE + (rest < 10 ? ":0" : ":") + rest;
  }
}
