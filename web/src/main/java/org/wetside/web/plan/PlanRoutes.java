package org.wetside.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.drawer.AddOutcome;
import org.wetside.app.plan.Tonight;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;

/** The start page and its two forms. */
public final class PlanRoutes implements Routes {
  private static final String TEMPLATE = "plan.jte";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public PlanRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/", ctx -> pages.show(ctx, TEMPLATE, plan(ctx, tonightForm(ctx), FilledForm.empty())));
    routes.post("/tonight", this::sayTonight);
    routes.post("/line", this::addLine);
    routes.addEndpoint(
        Operation.get("/api/tonight", "What there is tonight: kitchen, tap, kettle, latest end")
            .answers(TonightView.class, ctx -> TonightView.of(wetside.keepTonight().now())));
    routes.addEndpoint(
        Operation.put("/api/tonight", "Say what there is tonight; what is left out is not known")
            .answers(TonightView.class, TonightView.class, (ctx, said) -> kept(said)));
  }

  private void sayTonight(Context ctx) {
    TonightForm form = new TonightForm(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Tonight> said = form.read();
    if (said.isEmpty()) {
      pages.showRefused(ctx, TEMPLATE, plan(ctx, form.form(), FilledForm.empty()));
      return;
    }
    wetside.keepTonight().say(said.get());
    pages.goSaying(ctx, "/", "Kept what there is tonight.");
  }

  private void addLine(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      AddOutcome outcome = wetside.addRolls().lines(form.value("line"));
      if (outcome instanceof AddOutcome.Kept kept) {
        pages.goSaying(ctx, "/", "Put in " + kept.rolls().get(0).number() + ".");
        return;
      }
      AddOutcome.Refused refused = (AddOutcome.Refused) outcome;
      form = form.saying("line", refused.lines().get(0).reason());
    } catch (BadValueException refusal) {
      form = form.saying("line", refusal);
    }
    pages.showRefused(ctx, TEMPLATE, plan(ctx, tonightForm(ctx), form));
  }

  private TonightView kept(TonightView said) {
    wetside.keepTonight().say(said.tonight());
    return TonightView.of(wetside.keepTonight().now());
  }

  private FilledForm tonightForm(Context ctx) {
    return TonightForm.of(wetside.keepTonight().now(), Pages.units(ctx));
  }

  private PlanPage plan(Context ctx, FilledForm tonight, FilledForm line) {
    return new PlanDesk(wetside, Pages.units(ctx)).page(pages, ctx, tonight, line);
  }
}
