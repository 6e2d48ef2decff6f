package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.app.Wetside;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The page of what is looked at when a tank is closed. */
public final class TankCheckRoutes implements Routes {
  private static final String PATH = "/equipment/tanks/{name}/checks";
  private static final String TEMPLATE = "equipment/checks.jte";
  private static final String FIELD = "checks";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public TankCheckRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH, this::keep);
  }

  private void show(Context ctx) {
    Tank tank = known(ctx);
    List<ClosingItem> items = wetside.keepTankChecks().of(tank.name());
    pages.show(ctx, TEMPLATE, page(ctx, tank, FilledForm.of(Map.of(FIELD, lines(items)))));
  }

  private void keep(Context ctx) {
    Tank tank = known(ctx);
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    boolean usual = "usual".equals(ctx.formParam("do"));
    try {
      List<ClosingItem> items = ClosingItem.parse(usual ? "" : reader.form().value(FIELD));
      wetside.keepTankChecks().put(tank.name(), items);
      pages.goSaying(ctx, "/equipment", "Kept what is looked at on " + tank.name() + ".");
    } catch (BadValueException refusal) {
      reader.refuse(FIELD, refusal);
      pages.showRefused(ctx, TEMPLATE, page(ctx, tank, reader.form()));
    }
  }

  private TankCheckPage page(Context ctx, Tank tank, FilledForm form) {
    return new TankCheckPage(
        pages.sheet(ctx, Place.EQUIPMENT, "Checks of " + tank.name()), tank.name(), form);
  }

  private static String lines(List<ClosingItem> items) {
    return items.stream().map(ClosingItem::line).collect(Collectors.joining("\n"));
  }

  private Tank known(Context ctx) {
    String name = ctx.pathParam("name");
    return wetside
        .keepTanks()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no tank " + name + "."));
  }
}
