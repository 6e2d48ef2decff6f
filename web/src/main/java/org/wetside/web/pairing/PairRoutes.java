package org.wetside.web.pairing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Objects;
import org.wetside.app.Wetside;
import org.wetside.app.screens.Known;
import org.wetside.app.screens.PairOutcome;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;

/** The pairing page on the new screen. Looking at it uses no code up: only the press does. */
public final class PairRoutes implements Routes {
  private static final String TEMPLATE = "pair.jte";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside lets screens in
   * @param pages draws the page
   */
  public PairRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/pair", this::show);
    routes.post("/pair", this::pair);
  }

  private void show(Context ctx) {
    if (Asker.isThisMachine(ctx)) {
      pages.goSaying(ctx, "/screens", "This machine itself needs no pairing.");
      return;
    }
    var known = ScreenCookie.read(ctx).map(wetside.findScreens()::byKey);
    if (known.isPresent() && known.get() instanceof Known.LetIn in) {
      pages.goSaying(ctx, "/", "This screen is let in already, as " + in.screen().name() + ".");
      return;
    }
    String key = Objects.requireNonNullElse(ctx.queryParam("key"), "");
    var sheet = pages.bareSheet(ctx, "Pair this screen");
    Known who = known.orElseGet(Known.Unknown::new);
    pages.show(
        ctx,
        TEMPLATE,
        key.isBlank()
            ? PairPage.unpaired(sheet, ctx, PairPage.why(who, known.isPresent(), wetside.clock()))
            : PairPage.withKey(sheet, ctx, key));
  }

  private void pair(Context ctx) {
    FilledForm typed = FilledForm.of(ctx);
    String key = typed.value("key");
    String code = key.isEmpty() ? typed.value("code") : key;
    try {
      PairOutcome outcome = wetside.pairScreen().pair(code, typed.value("name"));
      if (outcome instanceof PairOutcome.Paired paired) {
        ScreenCookie.write(ctx, paired.key());
        pages.goSaying(ctx, "/", "This screen is let in as " + paired.screen().name() + ".");
        return;
      }
      refuse(ctx, outcome, typed);
    } catch (BadValueException refusal) {
      pages.showRefused(
          ctx,
          TEMPLATE,
          new PairPage(
              pages.bareSheet(ctx, "Not let in yet"),
              "The name is missing or too long; the code can still be used.",
              key,
              typed.saying("name", refusal)));
    }
  }

  private void refuse(Context ctx, PairOutcome outcome, FilledForm typed) {
    ctx.status(
        outcome instanceof PairOutcome.TooManyTries
            ? HttpStatus.TOO_MANY_REQUESTS
            : HttpStatus.FORBIDDEN);
    pages.show(
        ctx,
        TEMPLATE,
        new PairPage(
            pages.bareSheet(ctx, "Not let in"),
            PairPage.words(outcome),
            "",
            FilledForm.of(Map.of("name", typed.value("name")))));
  }
}
