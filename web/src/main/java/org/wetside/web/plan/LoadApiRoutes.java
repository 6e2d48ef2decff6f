package org.wetside.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** {@code /api/loads}: list, make, change, take apart. */
public final class LoadApiRoutes implements Routes {
  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public LoadApiRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/api/loads", ctx -> ctx.json(LoadsView.of(wetside)));
    routes.post(
        "/api/loads",
        ctx -> {
          Load made = wetside.makeLoad().make(Json.read(ctx, LoadBody.class).wish());
          ctx.status(HttpStatus.CREATED);
          ctx.header("Location", "/api/loads/" + made.id());
          answer(ctx, made);
        });
    routes.get("/api/loads/{load}", ctx -> answer(ctx, load(ctx)));
    routes.put(
        "/api/loads/{load}",
        ctx ->
            answer(
                ctx,
                wetside.makeLoad().change(load(ctx).id(), Json.read(ctx, LoadBody.class).wish())));
    routes.delete(
        "/api/loads/{load}",
        ctx -> {
          long id = load(ctx).id();
          wetside.makeLoad().dissolve(id);
          answer(ctx, wetside.listLoads().find(id).orElseThrow());
        });
  }

  /** One load; as a list of one where {@code as=list} is asked for, as the command line does. */
  private void answer(Context ctx, Load load) {
    LoadView view = LoadView.of(load, wetside.listLoads().runOf(load.id()).orElse(null));
    ctx.json("list".equals(ctx.queryParam("as")) ? new LoadsView(List.of(view)) : view);
  }

  private Load load(Context ctx) {
    String id = ctx.pathParam("load");
    try {
      return wetside
          .listLoads()
          .find(Long.parseLong(id))
          .orElseThrow(() -> new NotFoundResponse("There is no load " + id + "."));
    } catch (NumberFormatException notOne) {
      throw new BadValueException("load", id, "a whole number, for example 3");
    }
  }
}
