package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.Water;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The waters of the house: {@code /equipment/waters}, {@code /api/waters}. */
public final class WaterRoutes implements Routes {
  private static final String TEMPLATE = "equipment/waters.jte";
  private static final String HERE = "/equipment/waters";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public WaterRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, ctx -> pages.show(ctx, TEMPLATE, page(ctx, FilledForm.empty())));
    routes.post(HERE, this::keep);
    routes.post(HERE + "/remove", this::remove);
    routes.addEndpoint(
        Operation.get("/api/waters", "The waters of the house, the preferred one first")
            .answers(WatersView.class, ctx -> WatersView.of(wetside)));
    routes.addEndpoint(
        Operation.put("/api/waters", "Write a water down, or say it anew; answers with all")
            .answers(WaterView.class, WatersView.class, (ctx, body) -> put(body)));
    routes.addEndpoint(
        Operation.delete("/api/waters/{name}", "Take a water away; answers with those left")
            .answers(WatersView.class, this::taken));
  }

  private WatersView put(WaterView body) {
    wetside.keepWaters().put(body.water());
    return WatersView.of(wetside);
  }

  private WatersView taken(Context ctx) {
    String name = ctx.pathParam("name");
    if (!wetside.keepWaters().remove(name)) {
      throw new NotFoundResponse("There is no water " + name + ".");
    }
    return WatersView.of(wetside);
  }

  private void keep(Context ctx) {
    FieldReader read = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Temperature> has = read.requiredTemperature("temp", "temperature of the water");
    Optional<Water.Hardness> hardness = read.maybe("hardness", Water.Hardness::fromWord);
    if (read.isGood() && has.isPresent()) {
      try {
        Water water =
            new Water(
                read.form().value("name"), has.get(), hardness.orElse(Water.Hardness.NOT_SAID));
        wetside.keepWaters().put(water);
        pages.goSaying(ctx, HERE, "Kept " + water.name() + ".");
        return;
      } catch (BadValueException refusal) {
        read.refuse(refusal.thing().startsWith("name") ? "name" : "temp", refusal);
      }
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, read.form()));
  }

  private void remove(Context ctx) {
    String name = String.valueOf(ctx.formParam("name"));
    boolean removed = wetside.keepWaters().remove(name);
    pages.goSaying(ctx, HERE, removed ? "Took " + name + " away." : "There is no water " + name);
  }

  private WatersPage page(Context ctx, FilledForm form) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Water.Hardness hardness : Water.Hardness.values()) {
      words.put(hardness.word(), hardness.word());
    }
    return new WatersPage(
        pages.sheet(ctx, Place.EQUIPMENT, "Waters"), wetside.keepWaters().all(), form, words);
  }
}
