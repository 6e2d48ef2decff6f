package org.wetside.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import org.wetside.web.Routes;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The sheet of one run at the Bench. */
public final class BenchRoutes implements Routes {
  private final Pages pages;

  /**
   * @param pages draws the page
   */
  public BenchRoutes(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/bench/{run}", this::sheet);
  }

  private void sheet(Context ctx) {
    String run = ctx.pathParam("run");
    BenchPage page =
        new BenchPage(
            pages.sheet(ctx, Place.BENCH, "Run " + run), "Run " + run + ".", List.of(), "");
    pages.show(ctx, "bench.jte", page);
  }
}
