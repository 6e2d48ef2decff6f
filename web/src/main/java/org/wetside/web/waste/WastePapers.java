package org.wetside.web.waste;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.Today;
import org.wetside.core.waste.FilledJug;
import org.wetside.web.Routes;
import org.wetside.web.page.Pages;

/** The label of a jug and the sheet that goes with it: as PDF and as plain text. */
public final class WastePapers implements Routes {
  private static final String ONE = "/shelf/waste/{jug}";

  private final Wetside wetside;

  /** Over one open home. */
  public WastePapers(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ONE + "/label.pdf", ctx -> pdf(ctx, "label", paper(ctx).label()));
    routes.get(ONE + "/label.txt", ctx -> text(ctx, WasteText.label(paper(ctx))));
    routes.get(ONE + "/sheet.pdf", ctx -> pdf(ctx, "sheet", paper(ctx).handInSheet()));
    routes.get(ONE + "/sheet.txt", ctx -> text(ctx, WasteText.handInSheet(paper(ctx))));
  }

  private WastePaper paper(Context ctx) {
    String name = ctx.pathParam("jug");
    FilledJug jug =
        wetside
            .wasteBook()
            .keepJugs()
            .find(name)
            .orElseThrow(() -> new NotFoundResponse("There is no jug " + name + "."));
    return WastePaper.of(
        JugView.of(jug, wetside.wasteBook().keepJugs()),
        Pages.units(ctx),
        Today.of(wetside.clock()),
        ctx.queryParam("paper"));
  }

  private static void pdf(Context ctx, String name, byte[] bytes) {
    ctx.contentType("application/pdf");
    ctx.header("Content-Disposition", "inline; filename=\"waste-" + name + ".pdf\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(bytes);
  }

  private static void text(Context ctx, String words) {
    ctx.contentType("text/plain; charset=utf-8");
    ctx.header("Cache-Control", "no-store");
    ctx.result(words);
  }
}
