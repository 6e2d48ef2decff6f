package org.wetside.web.mixing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.TemperWish;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.WaterAtHand;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** All baths of a load at once: {@code /loads/{load}/temper} and the same over HTTP. */
public final class TemperLoadRoutes implements Routes {
  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public TemperLoadRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/loads/{load}/temper", this::show);
    routes.addEndpoint(
        Operation.get("/api/loads/{load}/temper", "All its baths brought to their temperatures")
            .query(TemperLoadQuery.class)
            .answers(TemperLoadView.class, this::answer));
  }

  private TemperLoadView answer(Context ctx) {
    return TemperLoadView.of(
        wetside.temperLoad().of(load(ctx), Query.read(ctx, TemperLoadQuery.class).wish()),
        Units.METRIC);
  }

  private void show(Context ctx) {
    long load = load(ctx);
    FieldReader reader = new FieldReader(asked(ctx), Pages.units(ctx));
    TemperLoadView answer = null;
    TemperWish wish = wish(reader);
    if (reader.isGood()) {
      try {
        answer = TemperLoadView.of(wetside.temperLoad().of(load, wish), Pages.units(ctx));
      } catch (BadValueException refused) {
        reader.refuse(
            refused.thing().startsWith("time constant")
                ? "tau"
                : refused.thing().startsWith("waters") ? "cold" : FilledForm.WHOLE,
            refused);
      }
    }
    show(ctx, load, reader.form(), answer);
  }

  private void show(Context ctx, long load, FilledForm form, @Nullable TemperLoadView answer) {
    TemperLoadPage page =
        new TemperLoadPage(
            pages.sheet(ctx, Place.PLAN, "Temper the baths of load " + load), load, form, answer);
    boolean refused = form.isRefused() && !form.values().isEmpty();
    if (refused) {
      pages.showRefused(ctx, "load-temper.jte", page);
    } else {
      pages.show(ctx, "load-temper.jte", page);
    }
  }

  private static TemperWish wish(FieldReader reader) {
    List<WaterAtHand> waters = new ArrayList<>();
    for (String name : List.of("cold", "hot", "ice")) {
      reader
          .maybe(name, text -> TemperLoadQuery.water(name, reader.units().temperature(text)))
          .ifPresent(has -> waters.add(new WaterAtHand(name, has)));
    }
    Optional<Temperature> room =
        reader.maybe("room", text -> TemperLoadQuery.room(reader.units().temperature(text)));
    Optional<Duration> tau =
        reader.maybe(
            "tau",
            text ->
                TimeSpan.parse(
                    "time constant of the drift",
                    text.matches("-?\\d+(\\.\\d+)?") ? text + "min" : text));
    return new TemperWish(waters, room, tau);
  }

  private static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, all) -> values.put(name, all.isEmpty() ? "" : all.get(0)));
    return FilledForm.of(values);
  }

  private long load(Context ctx) {
    String id = ctx.pathParam("load");
    try {
      long number = Long.parseLong(id);
      if (wetside.listLoads().find(number).isEmpty()) {
        throw new NotFoundResponse("There is no load " + id + ".");
      }
      return number;
    } catch (NumberFormatException notOne) {
      throw new BadValueException("load", id, "a whole number, for example 3");
    }
  }
}
