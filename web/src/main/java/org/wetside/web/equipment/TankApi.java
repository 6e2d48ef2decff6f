package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;

/** Tanks over HTTP: {@code /api/tanks} and {@code /api/tanks/{name}}. */
public final class TankApi implements Routes {
  private static final String ALL = "/api/tanks";
  private static final String ONE = "/api/tanks/{name}";
  private static final OneOrList<TankView, TanksView> SHAPE =
      new OneOrList<>(TankView.class, TanksView.class, TanksView::new);

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public TankApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "All tanks").answers(TanksView.class, ctx -> TanksView.of(wetside)));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post(ALL, "Write a tank down"), HttpStatus.CREATED)
            .takes(TankView.class)
            .handledBy(this::add));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One tank"), HttpStatus.OK)
            .handledBy(ctx -> SHAPE.answer(ctx, TankView.of(wetside, known(ctx)))));
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.put(ONE, "Say anew what a tank takes, or what is checked on it"),
                HttpStatus.OK)
            .takes(TankView.class)
            .handledBy(this::change));
    routes.addEndpoint(
        Operation.delete(ONE, "Take a tank away; answers with those that are left")
            .answers(TanksView.class, this::remove));
  }

  private void add(Context ctx) {
    TankView said = Json.read(ctx, TankView.class);
    Tank tank = said.tank();
    wetside.keepTanks().add(tank);
    said.keep(wetside, tank);
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, TankView.of(wetside, tank));
  }

  private void change(Context ctx) {
    Tank was = known(ctx);
    TankView said = Json.read(ctx, TankView.class).named(was.name());
    Tank now = said.over(was);
    if (!now.name().equals(was.name())) {
      throw new BadValueException(
          "name of the tank", now.name(), "a tank keeps its name, " + was.name());
    }
    said.keep(wetside, now);
    SHAPE.answer(ctx, TankView.of(wetside, now));
  }

  private TanksView remove(Context ctx) {
    wetside.keepTanks().remove(known(ctx).name());
    return TanksView.of(wetside);
  }

  private Tank known(Context ctx) {
    String name = ctx.pathParam("name");
    return wetside
        .keepTanks()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no tank " + name + "."));
  }
}
