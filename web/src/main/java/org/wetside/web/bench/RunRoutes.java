package org.wetside.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
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

/** The interface of the runs: {@code /api/runs…} and {@code /api/now}. */
public final class RunRoutes implements Routes {
  private static final int MOST_LISTED = 100;

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
    routes.get("/api/now", ctx -> ctx.json(new NowView(now())));
    routes.post("/api/runs", this::open);
    routes.get("/api/runs", ctx -> ctx.json(list()));
    routes.get("/api/runs/{run}", ctx -> ctx.json(look(number(ctx.pathParam("run")))));
    routes.get(
        "/api/runs/{run}/record",
        ctx -> ctx.json(RecordView.of(wetside.bench().look(number(ctx.pathParam("run"))))));
    routes.post("/api/runs/{run}/events", this::take);
    routes.sse(
        "/api/runs/{run}/stream",
        screen -> {
          long run = number(screen.ctx().pathParam("run"));
          stream().add(run, screen);
        });
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

  /** The server's moment. */
  public record NowView(String now) {}

  /** The body that opens a run. */
  public record OpenBody(@Nullable Long load) {}

  /** What became of an event, with the run after it. */
  public record AnswerView(String outcome, String reason, SnapshotView snapshot) {}

  /** The newest runs. */
  public record RunsView(List<RunLineView> runs) {}

  /** Why an event was not stored. */
  public record NotTakenView(
      String title, String detail, int status, int exitCode, String outcome) {}

  /** The run as a screen gets it. */
  SnapshotView look(long run) {
    return SnapshotView.of(wetside.bench().look(run), mishaps());
  }

  private RunsView list() {
    return new RunsView(wetside.bench().newest(MOST_LISTED).stream().map(RunLineView::of).toList());
  }

  private void open(Context ctx) {
    Long load = Json.read(ctx, OpenBody.class).load();
    if (load == null) {
      throw new BadValueException("load", "", "say which load, for example {\"load\": 3}");
    }
    BenchSnapshot opened = wetside.startRun().of(load);
    ctx.status(HttpStatus.CREATED);
    ctx.header("Location", "/api/runs/" + opened.card().id());
    ctx.json(SnapshotView.of(opened, mishaps()));
  }

  private void take(Context ctx) {
    long run = number(ctx.pathParam("run"));
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

  private static long number(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException("run", text, "a whole number, for example 7");
    }
  }
}
