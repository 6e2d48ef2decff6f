package org.wetside.web.process;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.process.FilmProcess;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** Processes and cues over HTTP: {@code /api/processes}, {@code /api/cues}. */
public final class ProcessApiRoutes implements Routes {
  private static final String ALL = "/api/processes";
  private static final String ONE = ALL + "/{slug}";
  private static final String COPY = ONE + "/copy";
  private static final OneOrList<ProcessView, ProcessesView> SHAPE =
      new OneOrList<>(ProcessView.class, ProcessesView.class, one -> new ProcessesView(one, null));

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public ProcessApiRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/cues", "Every cue of a process or of a load, by the clock")
            .query(CuesQuery.class)
            .answers(CuesView.class, this::cues));
    routes.addEndpoint(
        Operation.get(ALL, "The processes there are, the built-in ones first")
            .answers(
                ProcessesView.class,
                ctx -> ProcessesView.of(wetside.findProcess().all(), wetside.checkOrder())));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post(ALL, "Keep a process of one's own"), HttpStatus.CREATED)
            .takes(ProcessBody.class)
            .handledBy(this::add));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One process"), HttpStatus.OK)
            .query("text", "yes: with the text of it, in the shape that lists have")
            .handledBy(this::show));
    routes.addEndpoint(
        SHAPE
            .on(Operation.put(ONE, "Say a process of one's own anew"), HttpStatus.OK)
            .takes(ProcessBody.class)
            .handledBy(this::change));
    routes.addEndpoint(
        SHAPE
            .on(Operation.delete(ONE, "Take a process of one's own away"), HttpStatus.OK)
            .handledBy(this::remove));
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(COPY, "Copy any process under a name of one's own"),
                HttpStatus.CREATED)
            .takes(CopyBody.class)
            .handledBy(this::copy));
  }

  private CuesView cues(Context ctx) {
    return CuesView.of(Query.read(ctx, CuesQuery.class).answer(wetside.showCues()));
  }

  private void add(Context ctx) {
    created(ctx, wetside.keepProcess().add(Json.read(ctx, ProcessBody.class).draft()).orRefuse());
  }

  private void show(Context ctx) {
    FilmProcess process = found(ctx);
    if ("yes".equals(ctx.queryParam("text"))) {
      ctx.json(ProcessesView.withText(process, wetside.checkOrder()));
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

  private void created(Context ctx, FilmProcess process) {
    ctx.status(HttpStatus.CREATED);
    ctx.header("Location", "/api/processes/" + process.slug());
    answer(ctx, process);
  }

  private void answer(Context ctx, FilmProcess process) {
    SHAPE.answer(ctx, ProcessView.of(process, wetside.checkOrder()));
  }

  private FilmProcess found(Context ctx) {
    String slug = ctx.pathParam("slug");
    return wetside
        .findProcess()
        .find(slug)
        .orElseThrow(() -> new NotFoundResponse("There is no process " + slug + "."));
  }
}
