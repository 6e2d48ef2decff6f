package org.wetside.web.process;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.wetside.app.Wetside;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;

/** The way out of a warning: a rinse put between two baths of a process. */
public final class RinseRoutes implements Routes {
  private static final OneOrList<ProcessView, ProcessesView> SHAPE =
      new OneOrList<>(ProcessView.class, ProcessesView.class, one -> new ProcessesView(one, null));

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public RinseRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.post("/processes/{slug}/rinse", this::onPage);
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(
                    "/api/processes/{slug}/rinse",
                    "Put a rinse between two baths; of a built-in process a copy is made"),
                HttpStatus.OK)
            .takes(RinseBody.class)
            .handledBy(this::overApi));
  }

  private void onPage(Context ctx) {
    String slug = ctx.pathParam("slug");
    try {
      int before = RinseBody.parse(FilledForm.of(ctx).value("before")).step();
      FilmProcess process = wetside.addRinse().to(slug, before);
      pages.goSaying(
          ctx,
          "/processes/" + process.slug(),
          process.name() + " has a rinse before step " + (before + 1) + ".");
    } catch (BadValueException refused) {
      pages.goSaying(ctx, "/processes/" + slug, "No rinse added: " + refused.getMessage() + ".");
    }
  }

  private void overApi(Context ctx) {
    FilmProcess process =
        wetside.addRinse().to(ctx.pathParam("slug"), Json.read(ctx, RinseBody.class).step());
    SHAPE.answer(ctx, ProcessView.of(process, wetside.checkOrder()));
  }
}
