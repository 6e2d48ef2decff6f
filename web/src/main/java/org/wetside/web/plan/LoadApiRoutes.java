package org.wetside.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;

/** {@code /api/loads}: list, make, change, take apart. */
public final class LoadApiRoutes implements Routes {
  private static final String ONE = "/api/loads/{load}";
  private static final OneOrList<LoadView, LoadsView> SHAPE =
      new OneOrList<>(LoadView.class, LoadsView.class, LoadsView::new);

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public LoadApiRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/loads", "Loads that are planned or at the Bench")
            .answers(LoadsView.class, ctx -> LoadsView.of(wetside)));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post("/api/loads", "Make a load of rolls that wait"), HttpStatus.CREATED)
            .takes(LoadBody.class)
            .handledBy(this::make));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One load"), HttpStatus.OK)
            .handledBy(ctx -> answer(ctx, load(ctx))));
    routes.addEndpoint(
        SHAPE
            .on(Operation.put(ONE, "Say a planned load anew"), HttpStatus.OK)
            .takes(LoadBody.class)
            .handledBy(this::change));
    routes.addEndpoint(
        SHAPE
            .on(Operation.delete(ONE, "Take a planned load apart; its rolls wait"), HttpStatus.OK)
            .handledBy(this::dissolve));
  }

  private void make(Context ctx) {
    Load made = wetside.makeLoad().make(Json.read(ctx, LoadBody.class).wish());
    ctx.status(HttpStatus.CREATED).header("Location", "/api/loads/" + made.id());
    answer(ctx, made);
  }

  private void change(Context ctx) {
    long id = load(ctx).id();
    answer(ctx, wetside.makeLoad().change(id, Json.read(ctx, LoadBody.class).wish()));
  }

  private void dissolve(Context ctx) {
    long id = load(ctx).id();
    wetside.makeLoad().dissolve(id);
    answer(ctx, wetside.listLoads().find(id).orElseThrow());
  }

  private void answer(Context ctx, Load load) {
    SHAPE.answer(ctx, LoadView.of(wetside, load));
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
