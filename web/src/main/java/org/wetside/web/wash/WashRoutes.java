package org.wetside.web.wash;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.wash.ForeseeWash;
import org.wetside.app.wash.PlanDrying;
import org.wetside.app.wash.WashAnswer;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** Washing and drying: {@code /shelf/wash} and the same over HTTP. */
public final class WashRoutes implements Routes {
  private static final int WIDE = 920;
  private static final int NARROW = 380;

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home, for its clock. */
  public WashRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/shelf/wash", this::show);
    routes.addEndpoint(
        Operation.get("/api/wash", "What a wash leaves on the film, as a lower bound")
            .query(WashQuery.class, "volume")
            .answers(
                WashView.class,
                ctx -> WashView.of(Query.read(ctx, WashQuery.class).answer(), Units.METRIC)));
    routes.addEndpoint(
        Operation.get("/api/washes", "Every way to wash on file, for one tank and its film")
            .query(WashesQuery.class, "volume")
            .answers(
                WashesView.class,
                ctx -> WashesView.of(Query.read(ctx, WashesQuery.class).wish(), Units.METRIC)));
    routes.addEndpoint(
        Operation.get("/api/drying", "Wetting agent, hanging, and when film may be touched")
            .query(DryingQuery.class, "volume")
            .answers(DryingView.class, WashRoutes::drying));
  }

  private static DryingView drying(Context ctx) {
    DryingQuery query = Query.read(ctx, DryingQuery.class);
    return DryingView.of(
        new PlanDrying().answer(query.fill(), query.dilution()), query.hungAt(), Units.METRIC);
  }

  private void show(Context ctx) {
    Units units = Pages.units(ctx);
    WashForm form = new WashForm(new FieldReader(asked(ctx), units));
    Optional<WashAnswer> answer = form.answer();
    if (answer.isEmpty()) {
      pages.showRefused(ctx, "wash/wash.jte", page(ctx, form, null));
    } else {
      pages.show(ctx, "wash/wash.jte", page(ctx, form, answer.get()));
    }
  }

  private WashPage page(Context ctx, WashForm form, @Nullable WashAnswer answer) {
    Units units = Pages.units(ctx);
    WashAnswer drawn = answer != null && answer.dwellSaid() ? answer : null;
    return new WashPage(
        pages.sheet(ctx, Place.SHELF, "Wash and dry"),
        form.shown(),
        answer == null ? null : WashView.of(answer, units),
        drawn == null ? null : CourseDrawing.of(drawn.forecast(), WIDE),
        drawn == null ? null : CourseDrawing.of(drawn.forecast(), NARROW),
        form.wish().map(wish -> WashesView.of(wish, units).washes()).orElse(List.of()),
        answer == null ? null : dried(form, answer, units),
        WashPage.choices(new ForeseeWash().methods()));
  }

  private @Nullable DryingView dried(WashForm form, WashAnswer answer, Units units) {
    PlanDrying.Answer drying =
        new PlanDrying()
            .answer(answer.forecast().question().changes().get(0).water(), form.agent());
    LocalTime hung =
        form.hung()
            .orElseGet(
                () ->
                    LocalTime.ofInstant(
                        wetside
                            .clock()
                            .instant()
                            .plus(answer.forecast().length())
                            .plus(drying.about().agent().most()),
                        wetside.clock().getZone()));
    return DryingView.of(drying, Optional.of(hung), units);
  }

  /** What was asked; without a question the way with little water in a tank of 500 mL. */
  private static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, all) -> values.put(name, all.isEmpty() ? "" : all.get(0)));
    values.putIfAbsent("method", ForeseeWash.LOW_WATER);
    values.putIfAbsent("volume", Pages.units(ctx).words(Volume.ofMillilitres(500)));
    return FilledForm.of(values);
  }
}
