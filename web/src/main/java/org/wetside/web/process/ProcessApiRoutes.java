package org.wetside.web.process;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.process.FilmProcess;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** Processes and cues over HTTP: {@code /api/processes}, {@code /api/cues}. */
public final class ProcessApiRoutes implements Routes {
  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public ProcessApiRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/api/cues", this::cues);
    routes.get("/api/processes", ctx -> ctx.json(ProcessesView.of(wetside.findProcess().all())));
    routes.post("/api/processes", this::add);
    routes.get("/api/processes/{slug}", this::show);
    routes.put("/api/processes/{slug}", this::change);
    routes.delete("/api/processes/{slug}", this::remove);
    routes.post("/api/processes/{slug}/copy", this::copy);
  }

  private void cues(Context ctx) {
    CuesQuery query =
        new CuesQuery(
            ctx.queryParam("process"), ctx.queryParam("load"), ctx.queryParam("development"));
    ctx.json(CuesView.of(query.answer(wetside.showCues())));
  }

  private void add(Context ctx) {
    created(ctx, wetside.keepProcess().add(Json.read(ctx, ProcessBody.class).draft()).orRefuse());
  }

  private void show(Context ctx) {
    FilmProcess process = found(ctx);
    if ("yes".equals(ctx.queryParam("text"))) {
      ctx.json(ProcessesView.withText(process));
    } else {
      answer(ctx, process);
    }
  }

  private void change(Context ctx) {
    String slug = found(ctx).slug();
    ProcessBody body = Json.read(ctx, ProcessBody.class);
    answer(ctx, wetside.keepProcess().change(slug, body.draft()).orRefuse());
  }

  private void remove(Context ctx) {
    answer(ctx, wetside.removeProcess().remove(found(ctx).slug()));
  }

  private void copy(Context ctx) {
    CopyBody body = Json.read(ctx, CopyBody.class);
    created(
        ctx,
        wetside
            .keepProcess()
            .copy(
                found(ctx).slug(),
                body.process() == null ? "" : body.process(),
                body.name() == null ? "" : body.name())
            .orRefuse());
  }

  private static void created(Context ctx, FilmProcess process) {
    ctx.status(HttpStatus.CREATED);
    ctx.header("Location", "/api/processes/" + process.slug());
    answer(ctx, process);
  }

  /** One process; as a list of one where {@code as=list} is asked for, as the command line does. */
  private static void answer(Context ctx, FilmProcess process) {
    if ("list".equals(ctx.queryParam("as"))) {
      ctx.json(ProcessesView.one(process));
    } else {
      ctx.json(ProcessView.of(process));
    }
  }

  private FilmProcess found(Context ctx) {
    String slug = ctx.pathParam("slug");
    return wetside
        .findProcess()
        .find(slug)
        .orElseThrow(() -> new NotFoundResponse("There is no process " + slug + "."));
  }
}
