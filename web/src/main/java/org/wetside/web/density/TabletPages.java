package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.density.KeepTablets;
import org.wetside.app.density.TabletLines;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The step tablets on pages: a new one, one to see and to correct. */
public final class TabletPages implements Routes {
  private static final String ALL = DensityAddress.TABLETS;

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public TabletPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ALL, ctx -> show(ctx, Optional.empty(), FilledForm.empty()));
    routes.post(ALL, this::keep);
    routes.get(ALL + "/{tablet}", this::showOne);
    routes.post(ALL + "/{tablet}/remove", this::remove);
  }

  private KeepTablets tablets() {
    return wetside.densitometry().keepTablets();
  }

  private void showOne(Context ctx) {
    Optional<StepTablet> known = tablets().find(ctx.pathParam("tablet"));
    FilledForm form =
        known
            .map(
                tablet ->
                    FilledForm.of(
                        Map.of(
                            "name", tablet.name(),
                            "origin", tablet.origin(),
                            "steps", TabletLines.text(tablet))))
            .orElse(FilledForm.empty());
    if (known.isEmpty()) {
      throw new NotFoundResponse("There is no tablet " + ctx.pathParam("tablet") + ".");
    }
    show(ctx, known, form);
  }

  private void keep(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      StepTablet tablet =
          new StepTablet(
              form.value("name"), form.value("origin"), TabletLines.parse(form.value("steps")));
      tablets().put(tablet);
      pages.goSaying(
          ctx,
          DensityAddress.tablet(tablet.name()),
          "Kept. Calibrations made before keep the densities they were made with.");
    } catch (BadValueException refused) {
      String field =
          switch (refused.thing()) {
            case "name of the tablet" -> "name";
            case "origin of the densities" -> "origin";
            default -> "steps";
          };
      show(ctx, tablets().find(form.value("name")), form.saying(field, refused));
    }
  }

  private void remove(Context ctx) {
    String name = ctx.pathParam("tablet");
    boolean removed = tablets().remove(name);
    pages.goSaying(
        ctx,
        DensityAddress.INSTRUMENTS,
        removed ? "Took tablet " + name + " away." : "There is no tablet " + name + ".");
  }

  private void show(Context ctx, Optional<StepTablet> tablet, FilledForm form) {
    TabletPage page =
        new TabletPage(
            pages.sheet(
                ctx, Place.CURVES, tablet.map(one -> "Tablet " + one.name()).orElse("A tablet")),
            tablet.orElse(null),
            form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "density/tablet.jte", page);
    } else {
      pages.show(ctx, "density/tablet.jte", page);
    }
  }
}
