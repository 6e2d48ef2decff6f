package org.wetside.web.rolls;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** The interface of rolls: {@code /api/rolls} and {@code /api/rolls/{number}}. */
public final class RollsRoutes implements Routes {
  private static final String ONE = "/api/rolls/{number}";

  private final Wetside wetside;

  /**
   * @param wetside the open home
   */
  public RollsRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/api/rolls", this::list);
    routes.post("/api/rolls", this::add);
    routes.get(ONE, ctx -> ctx.json(one(known(ctx))));
    routes.patch(ONE, this::change);
    routes.delete(ONE, this::withdraw);
  }

  private void list(Context ctx) {
    String number = ctx.queryParam("number");
    ctx.json(
        number == null
            ? RollsView.found(wetside, ctx.queryParam("text"), ctx.queryParam("state"))
            : RollsView.one(wetside, number));
  }

  private void add(Context ctx) {
    boolean lines = String.valueOf(ctx.contentType()).startsWith("text/plain");
    List<Roll> kept =
        lines
            ? wetside.addRolls().lines(ctx.body()).orRefuse()
            : wetside.addRolls().drafts(drafts(ctx));
    ctx.status(HttpStatus.CREATED).json(RollsView.of(wetside, kept));
  }

  private static List<RollDraft> drafts(Context ctx) {
    if (!ctx.body().strip().startsWith("[")) {
      return List.of(Json.read(ctx, RollBody.class).draft());
    }
    List<RollDraft> drafts = new ArrayList<>();
    RollBody[] bodies = Json.read(ctx, RollBody[].class);
    for (int i = 0; i < bodies.length; i++) {
      try {
        drafts.add(bodies[i].draft());
      } catch (BadValueException wrong) {
        throw new BadValueException(
            "roll " + (i + 1) + " of " + bodies.length,
            String.valueOf(bodies[i].film()),
            "none was put into the drawer. " + wrong.getMessage());
      }
    }
    return drafts;
  }

  private void change(Context ctx) {
    Roll roll = known(ctx);
    RollBody body = Json.read(ctx, RollBody.class);
    Roll now =
        body.describes()
            ? wetside
                .changeRoll()
                .change(
                    roll.number(),
                    body.over(roll.described()),
                    Optional.ofNullable(body.filmCode()))
            : roll;
    if (body.sleeve() != null) {
      wetside.fileRoll().file(now.number(), body.sleeve());
    }
    if (body.withdrawn() != null) {
      if (body.withdrawn()) {
        wetside.withdrawRoll().withdraw(now.number());
      } else {
        wetside.withdrawRoll().putBack(now.number());
      }
    }
    ctx.json(one(now));
  }

  private void withdraw(Context ctx) {
    Roll roll = known(ctx);
    wetside.withdrawRoll().withdraw(roll.number());
    ctx.json(one(roll));
  }

  private RollView one(Roll roll) {
    return RollsView.one(wetside, roll.number()).rolls().get(0);
  }

  private Roll known(Context ctx) {
    String number = ctx.pathParam("number");
    return wetside
        .findRolls()
        .byNumber(number)
        .orElseThrow(() -> new NotFoundResponse("There is no roll " + number + "."));
  }
}
