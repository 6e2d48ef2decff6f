package org.wetside.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.Mishaps;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** A rinse between two baths of a run that is ready: the load is opened anew with it. */
public final class RunRinseRoutes implements Routes {
  private static final int LONGEST_NAME = 40;

  private final Wetside wetside;

  /**
   * @param wetside whose runs they are
   */
  public RunRinseRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  /**
   * Where a rinse is wanted.
   *
   * @param before number of the step it comes before, 2 or more
   * @param screen the screen that asks, 1 to 40 characters
   */
  public record RunRinseBody(@Nullable Integer before, @Nullable String screen) {}

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.post(
                "/api/runs/{run}/rinse",
                "Give up a run that is ready and open its load anew with a rinse between two baths")
            .creates(RunRinseBody.class, SnapshotView.class, this::rinsed));
  }

  private SnapshotView rinsed(Context ctx, RunRinseBody body) {
    Integer before = body.before();
    if (before == null) {
      throw new BadValueException("step for the rinse", "", "say before which step, from 2");
    }
    String screen = body.screen();
    if (screen == null || screen.isBlank() || screen.length() > LONGEST_NAME) {
      throw new BadValueException("screen", String.valueOf(screen), "1 to 40 characters");
    }
    BenchSnapshot opened = wetside.rinseRun().of(run(ctx), before, screen);
    ctx.header("Location", "/api/runs/" + opened.card().id());
    return SnapshotView.of(opened, Mishaps.all());
  }

  private static long run(Context ctx) {
    String text = ctx.pathParam("run");
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException("run", text, "a whole number, for example 7");
    }
  }
}
