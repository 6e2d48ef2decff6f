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
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

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
    routes.addEndpoint(
        Operation.get("/api/rolls", "Rolls, those that wait first; narrowed or found by words")
            .query(RollsQuery.class)
            .answers(RollsView.class, ctx -> Query.read(ctx, RollsQuery.class).answer(wetside)));
    routes.addEndpoint(
        Operation.post("/api/rolls", "Put rolls into the drawer, all or none")
            .takes(RollBody.class)
            .takes(RollBody[].class)
            .takes("text/plain", "one roll a line, as on the Drawer page")
            .gives(HttpStatus.CREATED, RollsView.class)
            .handledBy(this::add));
    routes.addEndpoint(
        Operation.get(ONE, "One roll with everything that was done to it")
            .answers(RollView.class, ctx -> one(known(ctx))));
    routes.addEndpoint(
        Operation.patch(ONE, "Change what is said of a roll, file it, withdraw it or put it back")
            .answers(RollBody.class, RollView.class, this::change));
    routes.addEndpoint(
        Operation.delete(ONE, "Withdraw a roll; no roll is ever deleted")
            .answers(RollView.class, this::withdraw));
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

  private RollView change(Context ctx, RollBody body) {
    Roll roll = known(ctx);
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
    return one(now);
  }

  private RollView withdraw(Context ctx) {
    Roll roll = known(ctx);
    wetside.withdrawRoll().withdraw(roll.number());
    return one(roll);
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
