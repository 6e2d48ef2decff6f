package org.wetside.web.formula;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;

/** Batches over HTTP: begun, ticked off, put into a bottle. */
public final class BatchApi implements Routes {
  private static final String ALL = "/api/batches";
  private static final String ONE = ALL + "/{batch}";
  private static final String STEP = ONE + "/steps/{step}";
  private static final OneOrList<BatchView, BatchesView> SHAPE =
      new OneOrList<>(BatchView.class, BatchesView.class, BatchesView::new);

  private final Wetside wetside;

  /** Over one open home. */
  public BatchApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The newest hundred batches mixed from formulas")
            .answers(
                BatchesView.class,
                ctx ->
                    new BatchesView(
                        wetside.mixBatch().all().stream().map(BatchView::of).toList())));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post(ALL, "Begin a batch of a formula"), HttpStatus.CREATED)
            .takes(BatchBody.class)
            .handledBy(this::begin));
    routes.addEndpoint(
        SHAPE
            .on(Operation.get(ONE, "One batch with its steps"), HttpStatus.OK)
            .handledBy(ctx -> answer(ctx, known(ctx, wetside))));
    routes.addEndpoint(
        SHAPE
            .on(Operation.put(STEP, "A step is done, with what really went in"), HttpStatus.OK)
            .takes(BatchStepBody.class)
            .handledBy(this::done));
    routes.addEndpoint(
        SHAPE
            .on(Operation.delete(STEP, "A step was not done after all"), HttpStatus.OK)
            .handledBy(
                ctx ->
                    answer(ctx, wetside.mixBatch().undone(known(ctx, wetside).id(), step(ctx)))));
    routes.addEndpoint(
        SHAPE
            .on(Operation.put(ONE + "/bottle", "Say which bottle it went into"), HttpStatus.OK)
            .takes(BatchBottleBody.class)
            .handledBy(
                ctx ->
                    answer(
                        ctx,
                        wetside
                            .mixBatch()
                            .fill(
                                known(ctx, wetside).id(),
                                said(
                                    "bottle",
                                    Json.read(ctx, BatchBottleBody.class).letter(),
                                    "say its letter, for example D")))));
  }

  private void begin(Context ctx) {
    BatchBody body = Json.read(ctx, BatchBody.class);
    String formula = said("formula", body.formula(), "say its name, for example D-76");
    Batch batch = wetside.mixBatch().begin(body.query().question(formula));
    ctx.status(HttpStatus.CREATED);
    ctx.header("Location", ALL + "/" + batch.id());
    answer(ctx, batch);
  }

  private void done(Context ctx) {
    long id = known(ctx, wetside).id();
    String amount =
        said(
            "amount",
            Json.read(ctx, BatchStepBody.class).amount(),
            "say what went in, for example 140.1g");
    answer(ctx, wetside.mixBatch().done(id, step(ctx), amount));
  }

  private static void answer(Context ctx, Batch batch) {
    SHAPE.answer(ctx, BatchView.of(batch));
  }

  /** A body may leave out what its record says it has. */
  private static String said(String thing, @Nullable String text, String limit) {
    if (text == null || text.isBlank()) {
      throw new BadValueException(thing, "", limit);
    }
    return text;
  }

  static Batch known(Context ctx, Wetside wetside) {
    String number = ctx.pathParam("batch");
    return (number.matches("\\d{1,9}")
            ? wetside.mixBatch().find(Long.parseLong(number))
            : Optional.<Batch>empty())
        .orElseThrow(() -> new NotFoundResponse("There is no batch " + number + "."));
  }

  static int step(Context ctx) {
    String number = ctx.pathParam("step");
    if (!number.matches("\\d{1,4}")) {
      throw new NotFoundResponse("There is no step " + number + ".");
    }
    return Integer.parseInt(number);
  }
}
