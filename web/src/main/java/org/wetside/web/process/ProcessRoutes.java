package org.wetside.web.process;

import io.javalin.config.RoutesConfig;
import org.wetside.app.Wetside;
import org.wetside.web.Routes;

/** {@code GET /api/cues}. */
public final class ProcessRoutes implements Routes {
  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public ProcessRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/api/cues",
        ctx -> {
          String load = ctx.queryParam("load");
          CuesQuery query =
              new CuesQuery(
                  load == null ? ctx.queryParam("process") : load, ctx.queryParam("development"));
          ctx.json(CuesView.of(query.answer(wetside.showCues())));
        });
  }
}
