package org.wetside.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.function.BiFunction;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.page.Pages;
import org.wetside.web.pairing.Door;

/** Run sheets: to print, to read, and as a record for programs. */
public final class SheetRoutes implements Routes {
  private final Wetside wetside;
  private final Door door;

  /**
   * @param wetside whose runs and loads they are
   * @param door where the server is found, for the code on the sheet
   */
  public SheetRoutes(Wetside wetside, Door door) {
    this.wetside = wetside;
    this.door = door;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/bench/{run}/sheet.pdf", pdf(this::ofRun));
    routes.get("/bench/{run}/sheet.txt", text(this::ofRun));
    routes.get("/loads/{load}/sheet.pdf", pdf(this::ofLoad));
    routes.get("/loads/{load}/sheet.txt", text(this::ofLoad));
    routes.addEndpoint(
        Operation.get("/api/runs/{run}/sheet", "All that stands on the run sheet of a run")
            .query(SheetWish.class)
            .answers(SheetView.class, ctx -> ofRun(ctx, Query.read(ctx, SheetWish.class))));
    routes.addEndpoint(
        Operation.get("/api/loads/{load}/sheet", "The same for a load, before it is run")
            .query(SheetWish.class)
            .answers(SheetView.class, ctx -> ofLoad(ctx, Query.read(ctx, SheetWish.class))));
  }

  private static Handler pdf(BiFunction<Context, SheetWish, SheetView> reading) {
    return ctx -> {
      SheetWish wish = wish(ctx);
      SheetView sheet = reading.apply(ctx, wish);
      ctx.contentType("application/pdf");
      ctx.header("Content-Disposition", "inline; filename=\"" + fileName(sheet) + ".pdf\"");
      ctx.header("Cache-Control", "no-store");
      ctx.result(SheetPdf.of(sheet, Pages.units(ctx), wish.format()));
    };
  }

  private static Handler text(BiFunction<Context, SheetWish, SheetView> reading) {
    return ctx -> {
      ctx.contentType("text/plain; charset=utf-8");
      ctx.header("Cache-Control", "no-store");
      ctx.result(SheetText.of(reading.apply(ctx, wish(ctx)), Pages.units(ctx)));
    };
  }

  private static SheetWish wish(Context ctx) {
    return new SheetWish(ctx.queryParam("start"), ctx.queryParam("paper"));
  }

  private static String fileName(SheetView sheet) {
    return sheet.run() == null ? "load-" + sheet.load() : "run-" + sheet.run();
  }

  private SheetView ofRun(Context ctx, SheetWish wish) {
    return reading().ofRun(number("run", ctx), wish);
  }

  private SheetView ofLoad(Context ctx, SheetWish wish) {
    return reading().ofLoad(number("load", ctx), wish);
  }

  private ReadSheet reading() {
    return new ReadSheet(wetside, ServerAddressOnPaper.of(door));
  }

  private static long number(String thing, Context ctx) {
    String text = ctx.pathParam(thing);
    if (!text.matches("\\d{1,9}")) {
      throw new BadValueException(thing, text, "a whole number, for example 7");
    }
    return Long.parseLong(text);
  }
}
