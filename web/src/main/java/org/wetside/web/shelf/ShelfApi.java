package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.FixerPair;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.mixing.Typed;

/** What follows from the ledgers, as JSON: the recall list, pairs of fixers, care for a bath. */
public final class ShelfApi implements Routes {
  private final Wetside wetside;

  /** Over one open home. */
  public ShelfApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/recall", "The rolls that are to be fixed again")
            .answers(RecallView.class, ctx -> recall()));
    routes.addEndpoint(
        Operation.post("/api/recall/{roll}", "A roll was fixed again, or belongs to somebody")
            .answers(RefixBody.class, RecallView.class, this::refix));
    routes.addEndpoint(
        Operation.get("/api/fixers", "Fixers that are used two after each other")
            .answers(FixersView.class, ctx -> fixers()));
    routes.addEndpoint(
        Operation.post("/api/fixers", "Make a pair of fixers, or turn it when the first is spent")
            .answers(FixersBody.class, FixersView.class, (ctx, body) -> turn(body)));
    routes.addEndpoint(
        Operation.get(
                "/api/bottles/{letter}/care", "Replenishing in parts, and times by roll number")
            .query("rolls", "film since it was replenished last, in rolls of 80 in²; 1 if not said")
            .query("perRollMl", "the leaflet's rate for one roll; the one on file if not said")
            .answers(CareView.class, this::care));
  }

  private RecallView recall() {
    return RecallView.of(wetside.readRecall().all());
  }

  private RecallView refix(Context ctx, RefixBody body) {
    String roll = ctx.pathParam("roll");
    if (body.owner() != null) {
      wetside.readRecall().setOwner(roll, body.owner());
    }
    if (Boolean.TRUE.equals(body.refixed())) {
      Optional<String> bottle =
          Optional.ofNullable(body.bottle()).filter(letter -> !letter.isBlank());
      wetside.readRecall().refixed(roll, bottle, body.note() == null ? "" : body.note());
    }
    return recall();
  }

  private FixersView fixers() {
    return FixersView.of(wetside);
  }

  private FixersView turn(FixersBody body) {
    String first = body.first();
    if (first == null) {
      throw new BadValueException("first fixer", "", "say the letter of its bottle");
    }
    if (Boolean.TRUE.equals(body.spent())) {
      FixerPair.Turn unused = body.turn(wetside);
    } else if (body.second() != null) {
      wetside.turnFixers().pair(first, body.second());
    } else {
      throw new BadValueException("second fixer", "", "say its letter, or that the first is spent");
    }
    return fixers();
  }

  private CareView care(Context ctx) {
    UnitOfUse film =
        Optional.ofNullable(ctx.queryParam("rolls"))
            .map(text -> UnitOfUse.ofRolls(Typed.number("rolls", text, "2 or 0.75")))
            .orElseGet(() -> wetside.careForBath().usualFilm(ctx.pathParam("letter")));
    Optional<Volume> rate =
        Optional.ofNullable(ctx.queryParam("perRollMl"))
            .map(text -> Volume.ofMillilitres(Typed.number("perRollMl", text, "44")));
    return CareView.of(wetside.careForBath().of(ctx.pathParam("letter"), film, rate));
  }
}
