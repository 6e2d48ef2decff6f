package org.wetside.web.drawer;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.core.development.Film;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.FilmTestLine;
import org.wetside.web.rolls.RollRow;

/** One roll of the drawer: corrected, taken out, put back. */
public final class RollPageRoutes implements Routes {
  private static final String TEMPLATE = "drawer/roll.jte";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public RollPageRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/drawer/{number}",
        ctx -> {
          Roll roll = known(ctx);
          pages.show(ctx, TEMPLATE, page(ctx, roll, RollForm.of(roll)));
        });
    routes.post("/drawer/{number}", this::change);
    routes.post(
        "/drawer/{number}/withdraw",
        ctx -> {
          Roll roll = known(ctx);
          wetside.withdrawRoll().withdraw(roll.number());
          pages.goSaying(ctx, "/drawer", "Taken out of the drawer: " + roll.number() + ".");
        });
    routes.post(
        "/drawer/{number}/return",
        ctx -> {
          Roll roll = known(ctx);
          wetside.withdrawRoll().putBack(roll.number());
          pages.goSaying(ctx, "/drawer", "Back in the drawer: " + roll.number() + ".");
        });
  }

  private void change(Context ctx) {
    Roll roll = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      Optional<String> chosen = Optional.of(form.value("filmCode")).filter(code -> !code.isEmpty());
      Roll now = wetside.changeRoll().change(roll.number(), RollForm.draft(form), chosen);
      pages.goSaying(
          ctx,
          now.state().isDeveloped() ? "/negatives/" + now.number() : "/drawer",
          "Kept: " + now.number() + ".");
    } catch (BadValueException refusal) {
      pages.showRefused(ctx, TEMPLATE, page(ctx, roll, RollForm.refused(form, refusal)));
    } catch (CannotDoException used) {
      FilledForm refused = form.saying(FilledForm.WHOLE, String.valueOf(used.getMessage()));
      pages.showRefused(ctx, TEMPLATE, page(ctx, roll, refused));
    }
  }

  private RollPage page(Context ctx, Roll roll, FilledForm form) {
    Map<String, String> films = new LinkedHashMap<>();
    if (roll.filmCode().isEmpty()) {
      for (Film film : wetside.findFilm().candidates(form.value("film"))) {
        films.putIfAbsent("", "not chosen yet");
        films.put(film.code(), film.label());
      }
    }
    return new RollPage(
        pages.sheet(ctx, Place.DRAWER, "Roll " + roll.number()),
        RollRow.of(wetside, List.of(roll)).get(0),
        form,
        FilmTestLine.of(wetside, roll.number(), Pages.units(ctx)),
        films,
        roll.filmCode().isEmpty()
            ? ""
            : wetside.learning().seeLearned().indexesInUse(roll.filmCode()));
  }

  private Roll known(Context ctx) {
    String number = ctx.pathParam("number");
    return wetside
        .findRolls()
        .byNumber(number)
        .orElseThrow(() -> new NotFoundResponse("There is no roll " + number + "."));
  }
}
