package org.wetside.web.learning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.wetside.app.Wetside;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;

/**
 * The page of what was learned, and the keys that use a factor or an index, or not: {@code
 * /curves/learning}.
 */
public final class LearningRoutes implements Routes {
  /** Where the page is found. */
  public static final String HERE = "/curves/learning";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public LearningRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, this::show);
    routes.post(HERE + "/use", this::use);
    routes.post(HERE + "/back", this::takeBack);
    routes.post(HERE + "/index/use", this::useIndex);
    routes.post(HERE + "/index/back", this::takeIndexBack);
  }

  private void show(Context ctx) {
    LearnedView learned = LearnedView.of(wetside.learning().seeLearned().now());
    pages.show(
        ctx,
        "learning/learning.jte",
        LearningPage.of(
            pages.sheet(ctx, Place.CURVES, "What was learned"), learned, Days.of(wetside.clock())));
  }

  private void use(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    var unused =
        wetside.learning().acceptFactor().accept(form.value("film"), form.value("developer"));
    pages.goSaying(
        ctx,
        HERE,
        "Times for "
            + form.value("film")
            + " in "
            + form.value("developer")
            + " are yours from now on.");
  }

  private void takeBack(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    wetside.learning().acceptFactor().takeBack(form.value("film"), form.value("developer"));
    pages.goSaying(
        ctx,
        HERE,
        "Times for "
            + form.value("film")
            + " in "
            + form.value("developer")
            + " are the printed ones again.");
  }

  private void useIndex(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    var unused =
        wetside.learning().acceptIndex().accept(form.value("film"), form.value("developer"));
    pages.goSaying(
        ctx,
        HERE,
        "Your index for " + form.value("film") + " in " + form.value("developer") + " is in use.");
  }

  private void takeIndexBack(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    wetside.learning().acceptIndex().takeBack(form.value("film"), form.value("developer"));
    pages.goSaying(
        ctx,
        HERE,
        "No index of your own is in use for "
            + form.value("film")
            + " in "
            + form.value("developer")
            + ".");
  }
}
