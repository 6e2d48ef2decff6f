package org.wetside.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.wetside.app.Wetside;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.page.Pages;
import org.wetside.web.pairing.Door;

/** Labels of bottles: one, a sheet of many, and as records for programs. */
public final class LabelRoutes implements Routes {
  private final Wetside wetside;
  private final Door door;

  /**
   * @param wetside whose bottles they are
   * @param door where the server is found, for the codes
   */
  public LabelRoutes(Wetside wetside, Door door) {
    this.wetside = wetside;
    this.door = door;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/shelf/{letter}/label.pdf", this::single);
    routes.get("/shelf/labels/sheet.pdf", this::sheet);
    routes.addEndpoint(
        Operation.get("/api/labels", "What is printed on the labels of bottles")
            .query(LabelWish.class)
            .answers(LabelsView.class, ctx -> labels(Query.read(ctx, LabelWish.class))));
  }

  private void single(Context ctx) {
    LabelWish wish = new LabelWish(ctx.pathParam("letter"), null);
    send(ctx, "label-" + ctx.pathParam("letter"), LabelPdf.single(labels(wish), Pages.units(ctx)));
  }

  private void sheet(Context ctx) {
    LabelWish wish = new LabelWish(ctx.queryParam("bottles"), ctx.queryParam("paper"));
    send(ctx, "labels", LabelPdf.sheet(labels(wish), Pages.units(ctx), wish.format()));
  }

  private static void send(Context ctx, String name, byte[] pdf) {
    ctx.contentType("application/pdf");
    ctx.header("Content-Disposition", "inline; filename=\"" + name + ".pdf\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(pdf);
  }

  private LabelsView labels(LabelWish wish) {
    return wish.labels(wetside, ServerAddressOnPaper.of(door));
  }
}
