package org.wetside.web.drawer;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.drawer.AddOutcome;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollBatch;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;
import org.wetside.web.rolls.RollRow;

/** The Drawer: its page, three ways to put rolls in, and the way to a load. */
public final class DrawerRoutes implements Routes {
  private static final String TEMPLATE = "drawer.jte";
  private static final String HERE = "/drawer";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public DrawerRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, this::open);
    routes.post("/drawer/line", this::addLine);
    routes.post("/drawer/roll", this::addRoll);
    routes.post("/drawer/many", this::addMany);
    routes.post("/drawer/load", this::makeLoad);
  }

  private void open(Context ctx) {
    String given = ctx.queryParam("find");
    pages.show(
        ctx, TEMPLATE, page(ctx, given == null ? "" : given.strip(), DrawerPage.Forms.fresh()));
  }

  private void addLine(Context ctx) {
    FilledForm line = FilledForm.of(ctx);
    try {
      AddOutcome outcome = wetside.addRolls().lines(line.value("line"));
      if (outcome instanceof AddOutcome.Kept kept) {
        done(ctx, kept.rolls());
        return;
      }
      line = line.saying("line", ((AddOutcome.Refused) outcome).lines().get(0).reason());
    } catch (BadValueException refusal) {
      line = line.saying("line", refusal);
    }
    refuse(ctx, new DrawerPage.Forms(line, RollForm.fresh(), FilledForm.empty()), List.of());
  }

  private void addRoll(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      done(ctx, wetside.addRolls().drafts(List.of(RollForm.draft(form))));
    } catch (BadValueException refusal) {
      FilledForm refused = RollForm.refused(form, refusal);
      refuse(ctx, new DrawerPage.Forms(FilledForm.empty(), refused, FilledForm.empty()), List.of());
    }
  }

  private void addMany(Context ctx) {
    FilledForm many = FilledForm.of(ctx);
    List<RollBatch.BadLine> bad = List.of();
    try {
      // not stripped: the numbers of the lines are those the person counts
      AddOutcome outcome = wetside.addRolls().lines(many.values().getOrDefault("lines", ""));
      if (outcome instanceof AddOutcome.Kept kept) {
        done(ctx, kept.rolls());
        return;
      }
      bad = ((AddOutcome.Refused) outcome).lines();
      many =
          many.saying(
              "lines", "None was put in. " + Days.count(bad.size(), "line") + " to put right.");
    } catch (BadValueException refusal) {
      many = many.saying("lines", refusal);
    }
    refuse(ctx, new DrawerPage.Forms(FilledForm.empty(), RollForm.fresh(), many), bad);
  }

  private void makeLoad(Context ctx) {
    List<String> ticked = ctx.formParams("rolls");
    if (ticked.isEmpty()) {
      DrawerPage page = page(ctx, "", DrawerPage.Forms.fresh());
      pages.showRefused(ctx, TEMPLATE, page.saying(List.of(), "Tick the rolls of the load first."));
      return;
    }
    String numbers =
        ticked.stream()
            .map(number -> URLEncoder.encode(number, StandardCharsets.UTF_8))
            .collect(Collectors.joining(","));
    ctx.redirect("/loads/new?rolls=" + numbers, HttpStatus.SEE_OTHER);
  }

  private void done(Context ctx, List<Roll> kept) {
    String numbers = kept.stream().map(Roll::number).collect(Collectors.joining(", "));
    pages.goSaying(
        ctx,
        HERE,
        kept.size() <= 4
            ? "In the drawer: " + numbers + "."
            : Days.count(kept.size(), "roll")
                + " in the drawer, "
                + kept.get(0).number()
                + " to "
                + kept.get(kept.size() - 1).number()
                + ".");
  }

  private void refuse(Context ctx, DrawerPage.Forms forms, List<RollBatch.BadLine> bad) {
    pages.showRefused(ctx, TEMPLATE, page(ctx, "", forms).saying(bad, null));
  }

  private DrawerPage page(Context ctx, String find, DrawerPage.Forms forms) {
    List<RollRow> waiting = in(RollState.WAITING);
    @Nullable List<RollRow> found =
        find.isEmpty() ? null : RollRow.of(wetside, wetside.findRolls().withWords(find));
    return new DrawerPage(
        pages.sheet(ctx, Place.DRAWER, Days.count(waiting.size(), "roll") + " waiting"),
        waiting,
        in(RollState.LOADED),
        in(RollState.PROCESSED),
        wetside.findRolls().in(RollState.FILED).size(),
        in(RollState.WITHDRAWN),
        find,
        found,
        forms,
        List.of(),
        wetside.learning().seeLearned().indexesInUse(Optional.empty()),
        null);
  }

  private List<RollRow> in(RollState state) {
    return RollRow.of(wetside, wetside.findRolls().in(state));
  }
}
