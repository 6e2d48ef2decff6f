package org.wetside.web.waste;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.waste.FilledJug;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** The book of waste over HTTP: {@code /api/waste}. */
public final class WasteApi implements Routes {
  private static final String ALL = "/api/waste";
  private static final String ONE = ALL + "/{jug}";

  private final Wetside wetside;

  /** Over one open home. */
  public WasteApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The jugs for waste, with litres and an estimate of silver")
            .answers(WasteView.class, ctx -> WasteView.of(wetside.wasteBook().keepJugs())));
    routes.addEndpoint(
        Operation.post(ALL, "Put an empty jug there")
            .creates(
                JugBody.class,
                WasteView.class,
                (ctx, body) -> view(wetside.wasteBook().keepJugs().add(body.described()))));
    routes.addEndpoint(
        Operation.get(ONE, "One jug with its book")
            .answers(WasteView.class, ctx -> view(known(ctx))));
    routes.addEndpoint(
        Operation.post(ONE + "/poured", "Pour into it; what must not meet is refused")
            .creates(
                PouringBody.class,
                WasteView.class,
                (ctx, body) -> view(body.to(wetside.wasteBook().pourWaste(), name(ctx)))));
    routes.addEndpoint(
        Operation.post(ONE + "/handed-in", "Hand it in: it comes back empty")
            .creates(
                HandInBody.class,
                WasteView.class,
                (ctx, body) -> view(body.to(wetside.wasteBook().handIn(), name(ctx)))));
    routes.addEndpoint(
        Operation.post(ONE + "/taken-back", "Take back a pouring that was not one")
            .creates(
                TakeBackBody.class,
                WasteView.class,
                (ctx, body) -> view(body.to(wetside.wasteBook().pourWaste(), name(ctx)))));
  }

  private WasteView view(FilledJug jug) {
    return WasteView.one(jug, wetside.wasteBook().keepJugs());
  }

  private String name(Context ctx) {
    return known(ctx).jug().name();
  }

  private FilledJug known(Context ctx) {
    String name = ctx.pathParam("jug");
    return wetside
        .wasteBook()
        .keepJugs()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no jug " + name + "."));
  }
}
