package org.wetside.web.learning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import org.jspecify.annotations.Nullable;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.drawer.RollRecord;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The form by which the negatives of a roll are judged: {@code /negatives/{number}/judge}. */
public final class JudgeRoutes implements Routes {
  private static final String HERE = "/negatives/{number}/judge";
  private static final String TEMPLATE = "learning/judge.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public JudgeRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, ctx -> pages.show(ctx, TEMPLATE, page(ctx, part(ctx))));
    routes.post(HERE, this::judge);
    routes.post(HERE + "/back", this::takeBack);
  }

  private void judge(Context ctx) {
    JudgePart part = part(ctx);
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    JudgeBody body =
        new JudgeBody(
            reader.form().value("edge"),
            reader.form().value("shadows"),
            reader.form().value("contrast"),
            density(reader, "base-fog", "base plus fog"),
            density(reader, "shadow-density", "density four stops under"),
            density(reader, "light-density", "density two stops over"),
            reader.form().value("water"),
            reader.form().value("thermometer"),
            reader.form().value("batch"));
    FilledForm form = reader.form();
    if (reader.isGood()) {
      try {
        var unused = wetside.learning().judgeRoll().judge(part.number(), body.seen(), body.used());
        pages.goSaying(ctx, "/negatives/" + part.number(), "Judged. What it says stands below.");
        return;
      } catch (BadValueException refused) {
        form = form.saying(field(refused), refused);
      } catch (CannotDoException refused) {
        form = form.saying(FilledForm.WHOLE, String.valueOf(refused.getMessage()));
      }
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, part.with(form)));
  }

  private void takeBack(Context ctx) {
    String number = part(ctx).number();
    var unused = wetside.learning().judgeRoll().takeBack(number);
    pages.goSaying(ctx, "/negatives/" + number, "The judgement is taken back; it counts no more.");
  }

  private static @Nullable Double density(FieldReader reader, String name, String thing) {
    return reader.maybe(name, text -> DensityText.parse(thing, text)).orElse(null);
  }

  private static String field(BadValueException refused) {
    return switch (refused.thing()) {
      case "base plus fog" -> "base-fog";
      case "density four stops under" -> "shadow-density";
      case "density two stops over" -> "light-density";
      case "shadows", "contrast", "water", "thermometer" -> refused.thing();
      case "edge print" -> "edge";
      case "bottle and batch" -> "batch";
      default -> FilledForm.WHOLE;
    };
  }

  private JudgePart part(Context ctx) {
    String number = ctx.pathParam("number");
    RollRecord record =
        wetside
            .readRecord()
            .of(number)
            .orElseThrow(() -> new NotFoundResponse("There is no roll " + number + "."));
    return JudgePart.of(wetside.learning(), record);
  }

  private JudgePage page(Context ctx, JudgePart part) {
    return new JudgePage(pages.sheet(ctx, Place.NEGATIVES, "Judge roll " + part.number()), part);
  }
}
