package org.wetside.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.Phase;
import org.wetside.reference.Mishaps;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The Bench: the list of runs, and the sheet of one. */
public final class BenchRoutes implements Routes {
  private static final int MOST_OVER = 5;
  private static final int MOST_LISTED = 20;

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside whose runs they are
   * @param pages draws the pages
   */
  public BenchRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/bench", this::list);
    routes.post("/bench", this::open);
    routes.get("/bench/{run}", this::sheet);
  }

  private void list(Context ctx) {
    BenchLines lines = new BenchLines(wetside.clock().getZone(), Pages.units(ctx));
    List<BenchListPage.RunLine> going = new ArrayList<>();
    List<BenchListPage.RunLine> over = new ArrayList<>();
    for (BenchSnapshot run : wetside.bench().newest(MOST_LISTED)) {
      if (!run.state().phase().over()) {
        going.add(lines.run(run));
      } else if (over.size() < MOST_OVER) {
        over.add(lines.run(run));
      }
    }
    List<BenchListPage.LoadLine> ready =
        wetside.startRun().waiting().stream().map(lines::load).toList();
    pages.show(
        ctx,
        "bench-list.jte",
        new BenchListPage(
            pages.sheet(ctx, Place.BENCH, "Bench"),
            going,
            ready,
            over,
            new TestLines(wetside).all()));
  }

  private void open(Context ctx) {
    BenchSnapshot opened = wetside.startRun().of(number("load", ctx.formParam("load")));
    ctx.redirect("/bench/" + opened.card().id(), HttpStatus.SEE_OTHER);
  }

  private void sheet(Context ctx) {
    BenchSnapshot run = wetside.bench().look(number("run", ctx.pathParam("run")));
    BenchLines lines = new BenchLines(wetside.clock().getZone(), Pages.units(ctx));
    String title = run.card().tank() + ", " + lines.rolls(run);
    pages.show(
        ctx,
        "bench.jte",
        new BenchPage(
            pages.sheet(ctx, Place.BENCH, title),
            sentence(run, lines),
            lines.rows(run),
            Json.write(SnapshotView.of(run, Mishaps.all()))));
  }

  private static String sentence(BenchSnapshot run, BenchLines lines) {
    BenchListPage.RunLine line = lines.run(run);
    boolean ready = run.state().phase() == Phase.READY;
    return run.card().tank()
        + ": "
        + line.state()
        + ", "
        + (ready ? "would hang" : line.timeWord())
        + " at "
        + line.time()
        + ".";
  }

  private static long number(String thing, @Nullable String text) {
    try {
      return Long.parseLong(String.valueOf(text));
    } catch (NumberFormatException notOne) {
      throw new BadValueException(thing, String.valueOf(text), "a whole number, for example 7");
    }
  }
}
