package org.wetside.web.testroll;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.wetside.app.Wetside;
import org.wetside.app.curves.PieceReader;
import org.wetside.app.shelf.Today;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** Test rolls over HTTP: {@code /api/testrolls}. */
public final class TestRollApi implements Routes {
  private static final String ALL = "/api/testrolls";
  private static final String ONE = ALL + "/{roll}";
  private static final String STEP = ONE + "/steps/{step}";
  private static final String PIECE = ONE + "/pieces/{piece}";

  private final Wetside wetside;

  /** Over one open home. */
  public TestRollApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The test rolls on file, and how far each has come")
            .answers(KeptTestRollsView.class, ctx -> KeptTestRollsView.of(wetside)));
    routes.addEndpoint(
        Operation.get(ALL + "/plan", "Plan a test roll without keeping it")
            .query(TestRollQuery.class, "metered", "middle")
            .answers(TestRollView.class, TestRollApi::plan));
    routes.addEndpoint(
        Operation.post(ALL, "Begin a test roll")
            .creates(
                TestRollQuery.class,
                KeptTestRollView.class,
                (ctx, body) ->
                    KeptTestRollView.of(rolls().begin(reader().requireComplete(body.draft())))));
    routes.addEndpoint(
        Operation.get(ONE, "One test roll: its plan, what was done, what was typed")
            .answers(KeptTestRollView.class, ctx -> KeptTestRollView.of(known(ctx))));
    routes.addEndpoint(
        Operation.put(ONE, "Plan a test roll anew, until its frames are exposed")
            .answers(
                TestRollQuery.class,
                KeptTestRollView.class,
                (ctx, body) ->
                    KeptTestRollView.of(
                        rolls().replan(known(ctx).id(), reader().requireComplete(body.draft())))));
    routes.addEndpoint(
        Operation.delete(ONE, "Put a test roll away; answers with those left")
            .answers(KeptTestRollsView.class, this::putAway));
    routes.addEndpoint(
        Operation.put(STEP, "Tick a step that is done by hand alone")
            .answers(
                TickBody.class,
                KeptTestRollView.class,
                (ctx, body) ->
                    KeptTestRollView.of(
                        rolls()
                            .tick(
                                known(ctx).id(),
                                step(ctx),
                                body.note() == null ? "" : body.note()))));
    routes.addEndpoint(
        Operation.delete(STEP, "Take the tick of a step away; what was typed stays")
            .answers(
                KeptTestRollView.class,
                ctx -> KeptTestRollView.of(rolls().untick(known(ctx).id(), step(ctx)))));
    routes.addEndpoint(
        Operation.put(PIECE, "Say how a piece was really developed")
            .answers(DevelopedBody.class, KeptTestRollView.class, this::develop));
    routes.addEndpoint(
        Operation.put(PIECE + "/readings", "Keep densities of a piece, and make its curve")
            .answers(ReadingsBody.class, KeptTestRollView.class, this::read));
  }

  private KeepTestRolls rolls() {
    return wetside.sensitometry().keepTestRolls();
  }

  private static TestRollReader reader() {
    return new TestRollReader(Units.METRIC);
  }

  private static TestRollView plan(Context ctx) {
    return TestRollView.of(reader().require(Query.read(ctx, TestRollQuery.class).draft()));
  }

  private KeptTestRollsView putAway(Context ctx) {
    boolean unused = rolls().putAway(known(ctx).id());
    return KeptTestRollsView.of(wetside);
  }

  private KeptTestRollView develop(Context ctx, DevelopedBody body) {
    KeptTestRoll kept = known(ctx);
    int piece = TestRollAddress.piece(ctx);
    return KeptTestRollView.of(
        rolls()
            .develop(
                kept.id(),
                piece,
                body.draft()
                    .require(
                        kept.roll().plan().times().of(piece),
                        Today.of(wetside.clock()),
                        Units.METRIC),
                body.words()));
  }

  private KeptTestRollView read(Context ctx, ReadingsBody body) {
    int piece = TestRollAddress.piece(ctx);
    KeptTestRoll before = known(ctx);
    KeptTestRoll kept = rolls().type(before.id(), body.typed(before, piece));
    if (!Boolean.TRUE.equals(body.curve())) {
      return KeptTestRollView.of(kept);
    }
    PieceReader reader = new PieceReader(wetside.densitometry());
    return reader
        .read(kept, piece, body.reader())
        .map(strip -> KeptTestRollView.of(rolls().keepCurve(kept.id(), piece, strip)))
        .orElseThrow(
            () ->
                new BadValueException(
                    "curve of piece " + piece,
                    "none",
                    "what was typed is kept; " + String.join(" ", reader.problems().values())));
  }

  private KeptTestRoll known(Context ctx) {
    return TestRollAddress.known(wetside, ctx);
  }

  private static TestStep step(Context ctx) {
    return TestStep.fromWord(ctx.pathParam("step"));
  }
}
