package org.wetside.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Load;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.process.RinseBody;

/** The same for a load: it is then led by the process that has the rinse. */
public final class LoadRinseRoutes implements Routes {
  private static final OneOrList<LoadView, LoadsView> SHAPE =
      new OneOrList<>(LoadView.class, LoadsView.class, LoadsView::new);

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public LoadRinseRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.post("/loads/{load}/rinse", this::onPage);
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(
                    "/api/loads/{load}/rinse",
                    "Lead a planned load by its process with a rinse between two baths"),
                HttpStatus.OK)
            .takes(RinseBody.class)
            .handledBy(this::overApi));
  }

  private void onPage(Context ctx) {
    Load load = load(ctx);
    String said;
    try {
      Load led = rinsed(load, RinseBody.parse(FilledForm.of(ctx).value("before")).step());
      said = "Load " + led.id() + " is led by " + led.process() + " now, which has the rinse.";
    } catch (BadValueException | CannotDoException refused) {
      said = "No rinse added: " + refused.getMessage() + ".";
    }
    pages.goSaying(ctx, "/loads/" + load.id(), said);
  }

  private void overApi(Context ctx) {
    SHAPE.answer(
        ctx, LoadView.of(wetside, rinsed(load(ctx), Json.read(ctx, RinseBody.class).step())));
  }

  private Load rinsed(Load load, int before) {
    FilmProcess process = wetside.addRinse().to(load.process(), before);
    return wetside.makeLoad().ledBy(load.id(), process.slug());
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
