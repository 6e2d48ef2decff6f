package org.wetside.web.negatives;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.drawer.RollRecord;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.learning.JudgePart;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;
import org.wetside.web.rolls.FilmTestLine;
import org.wetside.web.rolls.RollRow;

/** The Negatives: developed rolls found again, each with its record, its sleeve and its note. */
public final class NegativesRoutes implements Routes {
  private static final int SHOWN = 200;

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public NegativesRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/negatives", this::list);
    routes.get(
        "/negatives/{number}",
        ctx -> {
          RollRecord record = known(ctx);
          pages.show(ctx, "negatives/record.jte", page(ctx, record, fresh(record), noted(record)));
        });
    routes.post("/negatives/{number}/file", this::file);
    routes.post("/negatives/{number}/note", this::note);
  }

  private void list(Context ctx) {
    String given = ctx.queryParam("find");
    String find = given == null ? "" : given.strip();
    List<Roll> developed = wetside.findRolls().developed();
    long unfiled = developed.stream().filter(roll -> roll.state() != RollState.FILED).count();
    @Nullable List<RollRow> found =
        find.isEmpty()
            ? null
            : RollRow.of(
                wetside,
                wetside.findRolls().withWords(find).stream()
                    .filter(roll -> roll.state().isDeveloped())
                    .toList());
    pages.show(
        ctx,
        "negatives.jte",
        new NegativesPage(
            pages.sheet(ctx, Place.NEGATIVES, Days.count(developed.size(), "roll") + " developed"),
            RollRow.of(wetside, developed.stream().limit(SHOWN).toList()),
            unfiled,
            find,
            found));
  }

  private void file(Context ctx) {
    RollRecord record = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      wetside.fileRoll().file(record.roll().number(), form.value("sleeve"));
      pages.goSaying(
          ctx, "/negatives/" + record.roll().number(), "Filed: " + form.value("sleeve") + ".");
    } catch (BadValueException | CannotDoException refusal) {
      FilledForm refused = form.saying("sleeve", String.valueOf(refusal.getMessage()));
      pages.showRefused(ctx, "negatives/record.jte", page(ctx, record, refused, noted(record)));
    }
  }

  private void note(Context ctx) {
    RollRecord record = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      wetside
          .changeRoll()
          .change(
              record.roll().number(),
              record.roll().described().withNote(form.value("note")),
              Optional.empty());
      pages.goSaying(ctx, "/negatives/" + record.roll().number(), "The note is kept.");
    } catch (BadValueException refusal) {
      FilledForm refused = form.saying("note", refusal);
      pages.showRefused(ctx, "negatives/record.jte", page(ctx, record, fresh(record), refused));
    }
  }

  private static FilledForm fresh(RollRecord record) {
    return FilledForm.of(Map.of("sleeve", record.sleeve()));
  }

  private static FilledForm noted(RollRecord record) {
    return FilledForm.of(Map.of("note", record.roll().described().note()));
  }

  private RecordPage page(Context ctx, RollRecord record, FilledForm file, FilledForm write) {
    Roll roll = record.roll();
    return new RecordPage(
        pages.sheet(ctx, Place.NEGATIVES, "Roll " + roll.number()),
        RollRow.of(wetside, List.of(roll)).get(0),
        roll.state().isDeveloped(),
        roll.state() == RollState.FILED,
        record.sleeve(),
        roll.described().note(),
        FilmTestLine.of(wetside, roll.number(), Pages.units(ctx)),
        RunPart.all(record, Days.of(wetside.clock()), Pages.units(ctx)),
        file,
        write,
        roll.state().isDeveloped() ? JudgePart.of(wetside.learning(), record) : null);
  }

  private RollRecord known(Context ctx) {
    String number = ctx.pathParam("number");
    return wetside
        .readRecord()
        .of(number)
        .orElseThrow(() -> new NotFoundResponse("There is no roll " + number + "."));
  }
}
