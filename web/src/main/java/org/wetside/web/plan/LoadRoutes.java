package org.wetside.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.plan.PreparedLoad;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The pages of single loads: make one, mix it, change it, take it apart. */
public final class LoadRoutes implements Routes {
  private static final String FORM = "load-form.jte";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the pages
   */
  public LoadRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/loads/new", this::fresh);
    routes.post("/loads/new", ctx -> keep(ctx, null));
    routes.get("/loads/{load}", this::show);
    routes.get("/loads/{load}/change", this::changeForm);
    routes.post("/loads/{load}/change", ctx -> keep(ctx, load(ctx).id()));
    routes.post("/loads/{load}/dissolve", this::dissolve);
  }

  private void fresh(Context ctx) {
    List<String> rolls = LoadForm.numbers(ctx.queryParams("roll"), ctx.queryParams("rolls"));
    String tank = wetside.keepTanks().all().stream().map(Tank::name).findFirst().orElse("");
    pages.show(
        ctx, FORM, page(ctx, null, LoadForm.fresh(tank, Pages.units(ctx)), rolls, null, "A load"));
  }

  private void changeForm(Context ctx) {
    Load load = load(ctx);
    pages.show(
        ctx,
        FORM,
        page(
            ctx,
            load,
            LoadForm.of(load, Pages.units(ctx)),
            load.numbers(),
            null,
            "Change this load"));
  }

  /** The key decides: think it through, or keep it. */
  private void keep(Context ctx, @Nullable Long id) {
    Load before = id == null ? null : load(ctx);
    List<String> rolls = LoadForm.numbers(ctx.formParams("roll"), List.of());
    LoadForm form = new LoadForm(FilledForm.of(ctx), rolls, Pages.units(ctx));
    PreparedPart prepared = null;
    try {
      Optional<LoadWish> wish = form.read();
      if (wish.isPresent()) {
        PreparedLoad thought = wetside.makeLoad().prepared(wish.get());
        prepared = PreparedPart.of(thought, Pages.units(ctx));
        if ("keep".equals(ctx.formParam("do")) && thought.canBeKept()) {
          Load kept =
              id == null
                  ? wetside.makeLoad().make(wish.get())
                  : wetside.makeLoad().change(id, wish.get());
          pages.goSaying(ctx, "/loads/" + kept.id(), "Kept load " + kept.id() + ".");
          return;
        }
        if (thought.canBeKept()) {
          pages.show(ctx, FORM, page(ctx, before, form.form(), rolls, prepared, "A load"));
          return;
        }
      }
    } catch (BadValueException refusal) {
      form.say(refusal);
    }
    pages.showRefused(ctx, FORM, page(ctx, before, form.form(), rolls, prepared, "Not yet"));
  }

  private void show(Context ctx) {
    Load load = load(ctx);
    Optional<Long> run = wetside.listLoads().runOf(load.id());
    if (run.isPresent()) {
      ctx.redirect("/bench/" + run.get());
      return;
    }
    pages.show(
        ctx,
        "load.jte",
        new LoadSheet(wetside, load, Pages.units(ctx))
            .page(pages.sheet(ctx, Place.PLAN, "Load " + load.id() + ", mix")));
  }

  private void dissolve(Context ctx) {
    Load load = load(ctx);
    wetside.makeLoad().dissolve(load.id());
    pages.goSaying(
        ctx,
        "/",
        "Took load " + load.id() + " apart; " + String.join(", ", load.numbers()) + " wait again.");
  }

  private LoadFormPage page(
      Context ctx,
      @Nullable Load load,
      FilledForm form,
      List<String> ticked,
      @Nullable PreparedPart prepared,
      String title) {
    return new LoadFormPage(
        pages.sheet(ctx, Place.PLAN, title),
        load == null ? null : load.id(),
        form,
        ticks(load, ticked),
        tanks(),
        processes(),
        bottles(),
        prepared);
  }

  private List<LoadFormPage.Tick> ticks(@Nullable Load load, List<String> ticked) {
    List<Roll> rolls = new ArrayList<>();
    if (load != null) {
      load.numbers().forEach(one -> wetside.findRolls().byNumber(one).ifPresent(rolls::add));
    }
    rolls.addAll(wetside.findRolls().in(RollState.WAITING));
    return rolls.stream()
        .map(
            roll ->
                new LoadFormPage.Tick(
                    roll.number(),
                    roll.filmAndIndex(),
                    roll.described().title(),
                    ticked.stream().anyMatch(roll.number()::equalsIgnoreCase)))
        .toList();
  }

  private Map<String, String> tanks() {
    Map<String, String> tanks = new LinkedHashMap<>();
    wetside.keepTanks().all().forEach(tank -> tanks.put(tank.name(), tank.name()));
    return tanks;
  }

  private Map<String, String> processes() {
    Map<String, String> processes = new LinkedHashMap<>();
    for (FilmProcess process : wetside.findProcess().all()) {
      processes.put(process.slug(), process.name());
    }
    return processes;
  }

  private List<LoadFormPage.BottleChoice> bottles() {
    List<Bottle> shelf = wetside.listBottles().all();
    List<LoadFormPage.BottleChoice> choices = new ArrayList<>();
    for (BathKind bath : LoadForm.BATHS) {
      Map<String, String> letters = new LinkedHashMap<>();
      letters.put("", "as the process says");
      shelf.stream()
          .filter(bottle -> bottle.label().bath() == bath)
          .forEach(
              bottle ->
                  letters.put(
                      bottle.label().letter(),
                      bottle.label().letter()
                          + ", "
                          + bottle.label().contents()
                          + " "
                          + bottle.label().role().word()));
      if (letters.size() > 1) {
        choices.add(
            new LoadFormPage.BottleChoice(LoadForm.bottleField(bath), bath.word(), letters));
      }
    }
    return choices;
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
