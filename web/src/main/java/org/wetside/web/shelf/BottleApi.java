package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.FixingTime;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;

/** Bottles as JSON: {@code /api/bottles} and {@code /api/bottles/{letter}}. */
public final class BottleApi implements Routes {
  private static final String ALL = "/api/bottles";
  private static final String ONE = "/api/bottles/{letter}";
  private static final OneOrList<BottleView, BottlesView> SHAPE =
      new OneOrList<>(BottleView.class, BottlesView.class, BottlesView::new);

  private final Wetside wetside;

  /** Over one open home. */
  public BottleApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "All bottles on the shelf")
            .answers(BottlesView.class, ctx -> BottlesView.of(wetside)));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post(ALL, "Put a bottle on the shelf"), HttpStatus.CREATED)
            .takes(BottleBody.class)
            .handledBy(this::add));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One bottle with its book"), HttpStatus.OK)
            .query("before", "a number that olderLines gave: only lines before it")
            .query("at", "temperature of the fixer, for fixSeconds; 20C if not said")
            .handledBy(this::show));
    routes.addEndpoint(
        SHAPE
            .on(
                Operation.post(
                    ONE + "/book",
                    "A line of its book: open, take out, pour back, top up, correct, test"),
                HttpStatus.CREATED)
            .takes(BottleChangeBody.class)
            .handledBy(this::change));
    routes.addEndpoint(
        SHAPE
            .on(Operation.delete(ONE, "Discard it; answers with it as it was"), HttpStatus.OK)
            .query("note", "where it went")
            .handledBy(this::discard));
  }

  private void add(Context ctx) {
    BottleBody body = Json.read(ctx, BottleBody.class);
    BottleLabel label = body.label();
    wetside.addBottle().add(label, body.filled());
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, whole(wetside.judgeBottles().find(label.letter()).orElseThrow()));
  }

  private void show(Context ctx) {
    Optional<Long> before =
        Optional.ofNullable(ctx.queryParam("before")).map(BottleApi::lineNumber);
    String at = ctx.queryParam("at");
    Temperature fixedAt = at == null ? FixingTime.USUAL : Temperature.parse(at);
    SHAPE.answer(ctx, BottlesView.with(wetside, known(ctx, fixedAt), before));
  }

  private static long lineNumber(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException noNumber) {
      throw new BadValueException("line of the book", text, "a number that olderLines gave");
    }
  }

  private void change(Context ctx) {
    String letter = known(ctx).bottle().label().letter();
    Json.read(ctx, BottleChangeBody.class).to(wetside, letter);
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, whole(known(ctx)));
  }

  private void discard(Context ctx) {
    BottleView was = whole(known(ctx));
    String note = ctx.queryParam("note");
    wetside.changeBottle().discard(was.letter(), note == null ? "" : note);
    SHAPE.answer(ctx, was);
  }

  private BottleView whole(JudgedBottle judged) {
    return BottlesView.with(wetside, judged, Optional.empty());
  }

  private JudgedBottle known(Context ctx) {
    return known(ctx, FixingTime.USUAL);
  }

  private JudgedBottle known(Context ctx, Temperature fixedAt) {
    String letter = ctx.pathParam("letter");
    return wetside
        .judgeBottles()
        .find(letter, fixedAt)
        .orElseThrow(() -> new NotFoundResponse("No bottle " + letter + " ever stood here."));
  }
}
