package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.thermal.Thermometer;
import org.wetside.core.thermal.ThermometerOffset;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;

/** Thermometers over HTTP: {@code /api/thermometers} and {@code /api/thermometers/{name}}. */
public final class ThermometerApi implements Routes {
  private static final String ALL = "/api/thermometers";
  private static final String ONE = "/api/thermometers/{name}";
  private static final OneOrList<ThermometerView, ThermometersView> SHAPE =
      new OneOrList<>(ThermometerView.class, ThermometersView.class, ThermometersView::new);

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public ThermometerApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "All thermometers, each with the offset last found")
            .answers(ThermometersView.class, ctx -> ThermometersView.of(wetside)));
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(ALL, "Add a thermometer, with its offset if known"),
                HttpStatus.CREATED)
            .takes(ThermometerView.class)
            .handledBy(this::add));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One thermometer"), HttpStatus.OK)
            .handledBy(ctx -> SHAPE.answer(ctx, ThermometerView.of(known(ctx)))));
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(ONE + "/comparisons", "Compare it: the offset is found from that"),
                HttpStatus.CREATED)
            .takes(ComparisonBody.class)
            .handledBy(this::compare));
    routes.addEndpoint(
        Operation.delete(ONE, "Take a thermometer away; answers with those that are left")
            .answers(ThermometersView.class, this::remove));
  }

  private void add(Context ctx) {
    ThermometerView body = Json.read(ctx, ThermometerView.class);
    String name = body.name() == null ? "" : body.name().strip();
    Optional<ThermometerOffset> offset = body.offset(today());
    if (offset.isEmpty() || wetside.keepThermometers().find(name).isEmpty()) {
      wetside.keepThermometers().add(name);
    }
    offset.ifPresent(found -> wetside.keepThermometers().compared(name, found));
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, ThermometerView.of(wetside.keepThermometers().find(name).orElseThrow()));
  }

  private void compare(Context ctx) {
    String name = known(ctx).name();
    ThermometerOffset found = Json.read(ctx, ComparisonBody.class).offset(today());
    wetside.keepThermometers().compared(name, found);
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, ThermometerView.of(known(ctx)));
  }

  private ThermometersView remove(Context ctx) {
    wetside.keepThermometers().remove(known(ctx).name());
    return ThermometersView.of(wetside);
  }

  private Thermometer known(Context ctx) {
    String name = ctx.pathParam("name");
    return wetside
        .keepThermometers()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no thermometer " + name + "."));
  }

  private LocalDate today() {
    return LocalDate.ofInstant(wetside.clock().instant(), wetside.clock().getZone());
  }
}
