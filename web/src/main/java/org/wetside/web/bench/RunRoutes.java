package org.wetside.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseHandler;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.Answer;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.bench.NoSuchRunException;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Outcome;
import org.wetside.reference.Mishaps;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.api.Problem;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.mixing.DriftQuery;
import org.wetside.web.mixing.DriftView;

/** The interface of the runs: {@code /api/runs…} and {@code /api/now}. */
public final class RunRoutes implements Routes {
  private static final String ONE = "/api/runs/{run}";
  private static final int MOST_LISTED = 100;
  private static final int LONGEST_NAME = 40;

  private final Wetside wetside;
  private @Nullable RunStream stream;
  private @Nullable List<MishapAdvice> mishaps;

  /**
   * @param wetside whose runs they are
   */
  public RunRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/now", "The server's moment, by which screens set their clock")
            .answers(NowView.class, ctx -> new NowView(now())));
    routes.addEndpoint(
        Operation.post("/api/runs", "Bring a load to the Bench")
            .creates(OpenBody.class, SnapshotView.class, this::open));
    routes.addEndpoint(
        Operation.get("/api/runs", "The newest hundred runs")
            .answers(RunsView.class, ctx -> list()));
    routes.addEndpoint(
        Operation.get(ONE, "A run as it stands")
            .answers(SnapshotView.class, ctx -> look(run(ctx))));
    routes.addEndpoint(
        Operation.get(ONE + "/record", "Everything that happened in a run")
            .answers(
                RecordView.class,
                ctx -> RecordView.of(wetside.bench().look(run(ctx)), wetside.askRate())));
    routes.addEndpoint(
        Operation.get(ONE + "/drift", "Where a bath of a run was going, by its readings")
            .query("step", "index of the step; the developer when it is not said")
            .query(DriftQuery.class)
            .answers(
                DriftView.class,
                ctx ->
                    RunDrift.of(
                        wetside.bench().look(run(ctx)),
                        ctx.queryParam("step"),
                        Query.read(ctx, DriftQuery.class))));
    routes.addEndpoint(
        Operation.get(ONE + "/dilutions", "What else its developer may be mixed as, with new times")
            .answers(
                DilutionsView.class, ctx -> DilutionsView.of(wetside.askDilutions().of(run(ctx)))));
    routes.addEndpoint(
        Operation.post(ONE + "/events", "Say what happened; the same id again changes nothing")
            .takes(EventBody.class)
            .gives(HttpStatus.OK, AnswerView.class)
            .gives(HttpStatus.CONFLICT, Problem.MEDIA_TYPE, NotTakenView.class)
            .gives(HttpStatus.UNPROCESSABLE_CONTENT, Problem.MEDIA_TYPE, NotTakenView.class)
            .handledBy(this::take));
    routes.addEndpoint(
        Operation.get(ONE + "/stream", "Server events: snapshot after each change, heartbeat")
            .query("screen", "the name of the screen, which the others are told; may be left out")
            .gives(
                HttpStatus.OK,
                "text/event-stream",
                "snapshot with the run as it stands, its id the sequence; screens with who shows"
                    + " it; heartbeat with the server's moment every 15 s")
            .handledBy(new SseHandler(screen -> stream().add(run(screen.ctx()), screen))));
    routes.addEndpoint(
        Operation.get(ONE + "/start", "When a run that is ready is best begun beside the others")
            .answers(StartView.class, ctx -> start(run(ctx))));
    routes.addEndpoint(
        Operation.post(ONE + "/screens", "Say whether a screen can be heard; the others are told")
            .answers(
                RunStream.ScreenBody.class,
                RunStream.ScreensView.class,
                (ctx, body) -> heard(run(ctx), body)));
    routes.exception(
        NoSuchRunException.class,
        (missing, ctx) -> {
          Problem problem = Problem.notFound(String.valueOf(missing.getMessage()));
          ctx.status(problem.status());
          ctx.result(Json.write(problem)).contentType(Problem.MEDIA_TYPE);
        });
  }

  @Override
  public synchronized void close() {
    if (stream != null) {
      stream.close();
      stream = null;
    }
  }

  /**
   * The server's moment.
   *
   * @param now in UTC
   */
  public record NowView(String now) {}

  /**
   * The body that opens a run.
   *
   * @param load number of the load
   */
  public record OpenBody(@Nullable Long load) {}

  /**
   * What became of an event, with the run after it.
   *
   * @param outcome applied, or noted when it changed nothing
   * @param reason why it was only noted; may be empty
   * @param snapshot the run as it stands now
   */
  public record AnswerView(String outcome, String reason, SnapshotView snapshot) {}

  /**
   * The newest runs.
   *
   * @param runs the newest first
   */
  public record RunsView(List<RunLineView> runs) {}

  /**
   * Why an event was not stored.
   *
   * @param title the same words for every case
   * @param detail the sentence for the person
   * @param status HTTP status
   * @param exitCode 2
   * @param outcome asks, when it would be taken with {@code confirmed}; else refused
   */
  public record NotTakenView(
      String title, String detail, int status, int exitCode, String outcome) {}

  /**
   * When a run that is ready is best begun.
   *
   * @param from the earliest moment from which both hands are always free; null when nothing else
   *     goes on
   * @param until the last moment of the same stretch
   * @param clashesIfNow how often two tanks would want the hands if it were begun at once
   */
  public record StartView(@Nullable String from, @Nullable String until, int clashesIfNow) {}

  private StartView start(long run) {
    return wetside
        .bench()
        .startAdvice(run)
        .map(
            advice ->
                new StartView(
                    Instants.text(advice.from()),
                    Instants.text(advice.until()),
                    advice.ifNow().size()))
        .orElse(new StartView(null, null, 0));
  }

  /** The run as a screen gets it. */
  SnapshotView look(long run) {
    return SnapshotView.of(wetside.bench().look(run), mishaps());
  }

  private RunsView list() {
    return new RunsView(wetside.bench().newest(MOST_LISTED).stream().map(RunLineView::of).toList());
  }

  private SnapshotView open(Context ctx, OpenBody body) {
    Long load = body.load();
    if (load == null) {
      throw new BadValueException("load", "", "say which load, for example {\"load\": 3}");
    }
    BenchSnapshot opened = wetside.startRun().of(load);
    ctx.header("Location", "/api/runs/" + opened.card().id());
    return SnapshotView.of(opened, mishaps());
  }

  private RunStream.ScreensView heard(long run, RunStream.ScreenBody body) {
    String screen = body.screen();
    if (screen == null || screen.isBlank() || screen.length() > LONGEST_NAME) {
      throw new BadValueException("screen", String.valueOf(screen), "1 to 40 characters");
    }
    String since = body.leadingSince();
    if (since != null) {
      wetside.bench().led(run, screen, Instants.read("leadingSince", since));
    }
    return stream().heard(run, screen, !Boolean.FALSE.equals(body.silent()));
  }

  private void take(Context ctx) {
    long run = run(ctx);
    Answer answer;
    try {
      answer = wetside.bench().take(run, Json.read(ctx, EventBody.class).event(mishaps()));
    } catch (BadValueException unreadable) {
      notTaken(ctx, HttpStatus.UNPROCESSABLE_CONTENT, "refused", unreadable.getMessage());
      return;
    }
    Outcome outcome = answer.outcome();
    if (outcome instanceof Outcome.Asks asks) {
      notTaken(ctx, HttpStatus.CONFLICT, "asks", asks.question());
    } else if (outcome instanceof Outcome.Refused refused) {
      notTaken(ctx, HttpStatus.CONFLICT, "refused", refused.reason());
    } else {
      String reason = outcome instanceof Outcome.Noted noted ? noted.reason() : "";
      ctx.json(
          new AnswerView(
              reason.isEmpty() ? "applied" : "noted",
              reason,
              SnapshotView.of(answer.snapshot(), mishaps())));
    }
  }

  private static void notTaken(
      Context ctx, HttpStatus status, String outcome, @Nullable String why) {
    ctx.status(status);
    ctx.result(
            Json.write(
                new NotTakenView("not taken", String.valueOf(why), status.getCode(), 2, outcome)))
        .contentType(Problem.MEDIA_TYPE);
  }

  private synchronized RunStream stream() {
    RunStream lines = stream;
    if (lines == null) {
      RunStream fresh = new RunStream(this::look, this::now);
      AutoCloseable unused = wetside.bench().watch(fresh::changed);
      stream = fresh;
      lines = fresh;
    }
    return lines;
  }

  private synchronized List<MishapAdvice> mishaps() {
    List<MishapAdvice> all = mishaps;
    if (all == null) {
      all = Mishaps.all();
      mishaps = all;
    }
    return all;
  }

  private String now() {
    return Instants.text(wetside.clock().instant());
  }

  private static long run(Context ctx) {
    String text = ctx.pathParam("run");
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException("run", text, "a whole number, for example 7");
    }
  }
}
