package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.process.ShowCues;
import org.wetside.app.sound.MakeTrack;
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

  @Option(
      names = "--track",
      paramLabel = "FILE",
      description = "write the whole as one audio file, .opus or .wav, for any player")
  @Nullable String track;

  @Option(names = "--no-tick", description = "leave out the soft tick every 15 s of the track")
  boolean noTick;

  @Option(names = "--force", description = "replace the file of the track if it is there")
  boolean force;

  private Optional<TrackFile> file = Optional.empty();

  @Override
  CuesView answerHere(Wetside wetside) {
    file = file();
    ShowCues.Cues cues = CuesQuery.typed(what, development).answer(wetside.showCues());
    file.ifPresent(
        wanted ->
            wanted.write(wanted.format().write(wetside.makeTrack().ofPlan(cues, !noTick)).from(0)));
    return CuesView.of(cues);
  }

  @Override
  Optional<CuesView> answerThere(ServerCall server) {
    file = file();
    Optional<CuesView> view = super.answerThere(server);
    boolean there =
        view.isPresent()
            && file.map(
                    wanted ->
                        server.copy(
                            question("/api/cues/track." + wanted.format().ending())
                                .with("tick", noTick ? "no" : null),
                            wanted::write))
                .orElse(true);
    return there ? view : Optional.empty();
  }

  private Optional<TrackFile> file() {
    return Optional.ofNullable(track).map(name -> TrackFile.named(name, force));
  }

  @Override
  ServerRequest request() {
    return question("/api/cues");
  }

  private ServerRequest question(String path) {
    CuesQuery query = CuesQuery.typed(what, development);
    return ServerRequest.get(path)
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
    file.ifPresent(written -> print(written, view, out));
  }

  private static void print(TrackFile written, CuesView view, PrintWriter out) {
    double firstPour = MakeTrack.LEAD_MILLISECONDS / 1000.0 - view.cues().get(0).atSeconds();
    out.println(written.path() + ": " + written.size() + ", the first pour at " + clock(firstPour));
  }

  private static String clock(double seconds) {
    long whole = Math.round(Math.abs(seconds));
    long rest = whole % SECONDS_PER_MINUTE;
    return (seconds < 0 ? "-" : "") + whole / SECONDS_PER_MINUTE + (rest < 10 ? ":0" : ":") + rest;
  }
}
