package org.wetside.web.formula;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.wetside.app.Wetside;
import org.wetside.app.formula.AtHand;
import org.wetside.app.formula.HowTo;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The pages of formulas: the list, one weighed out, one of one's own. */
public final class FormulaPages implements Routes {
  private static final String ONE = FormulaAddress.ALL + "/{formula}";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public FormulaPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(FormulaAddress.ALL, this::list);
    routes.get(FormulaAddress.ALL + "/new", ctx -> showNew(ctx, FilledForm.empty()));
    routes.post(FormulaAddress.ALL + "/new", this::keep);
    routes.get(ONE, ctx -> show(ctx, new FormulaWish(asked(ctx), Pages.units(ctx))));
    routes.post(ONE + "/remove", this::remove);
    routes.get(ONE + "/card.pdf", this::card);
  }

  private void list(Context ctx) {
    FormulasView all = FormulasView.of(wetside.formulaBook().all());
    pages.show(
        ctx,
        "formula/list.jte",
        new FormulasPage(
            pages.sheet(ctx, Place.SHELF, "Formulas"), all.formulas(), wetside.mixBatch().all()));
  }

  /** The formula as it was asked for; when that cannot be, as it is written, with all typed. */
  void show(Context ctx, FormulaWish wish) {
    Formula formula = known(ctx, wetside);
    Optional<WeighOut.Question> question = wish.question(formula.code());
    FilledForm form = wish.form();
    WeighOut.Answer answer = null;
    if (question.isPresent()) {
      try {
        answer = wetside.weighOut().answer(question.get());
      } catch (BadValueException refused) {
        form = form.saying(FormulaWish.fieldOf(refused), refused);
      }
    }
    if (answer == null) {
      answer = wetside.weighOut().answer(FormulaQuery.nothing().question(formula.code()));
    }
    FormulaView view = FormulaView.of(answer);
    FormulaPage page =
        new FormulaPage(
            pages.sheet(ctx, Place.SHELF, formula.code()),
            view,
            StepLine.of(view, Pages.units(ctx)),
            balance(wetside.weighOut().atHand()),
            measures(wetside.weighOut().atHand()),
            choices(formula),
            form,
            view.mixable() && !form.isRefused()
                ? Optional.of(cardAddress(ctx, formula))
                : Optional.empty());
    if (form.isRefused()) {
      pages.showRefused(ctx, "formula/formula.jte", page);
    } else {
      pages.show(ctx, "formula/formula.jte", page);
    }
  }

  private void card(Context ctx) {
    Formula formula = known(ctx, wetside);
    FormulaWish wish = new FormulaWish(asked(ctx), Pages.units(ctx));
    WeighOut.Question question = wish.question(formula.code()).orElseThrow(wish::refusal);
    FormulaView view = FormulaView.of(wetside.weighOut().answer(question));
    ctx.contentType("application/pdf");
    ctx.header("Content-Disposition", "inline; filename=\"mixing-card.pdf\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(MixingCard.pdf(view, Pages.units(ctx), ctx.queryParam("paper")));
  }

  private void keep(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      Formula kept =
          wetside
              .keepFormula()
              .keep(
                  new FormulaBody(
                          form.value("code"),
                          form.value("name"),
                          form.value("kind"),
                          form.value("source"),
                          form.value("note"),
                          form.value("lines"))
                      .toOwn());
      pages.goSaying(ctx, FormulaAddress.of(kept.code()), kept.code() + " is kept.");
    } catch (BadValueException refused) {
      String field = refused.thing().equals("formula name") ? "code" : "lines";
      showNew(ctx, form.saying(field, refused));
    }
  }

  private void remove(Context ctx) {
    Formula formula = wetside.keepFormula().remove(known(ctx, wetside).code());
    pages.goSaying(
        ctx, FormulaAddress.ALL, formula.code() + " is taken away; its batches are kept.");
  }

  private void showNew(Context ctx, FilledForm form) {
    FormulaFormPage page =
        new FormulaFormPage(pages.sheet(ctx, Place.SHELF, "A formula of your own"), form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "formula/new.jte", page);
    } else {
      pages.show(ctx, "formula/new.jte", page);
    }
  }

  private static String balance(AtHand atHand) {
    String step = HowTo.grams(atHand.balanceOrUsual().step().grams());
    return "when not said: "
        + step
        + (atHand.balance().isPresent() ? ", as under Equipment" : ", usual at home");
  }

  private static String measures(AtHand atHand) {
    return "what each holds and its division: 100mL/1mL, 10mL/0.5mL; when not said: "
        + atHand
            .measures()
            .map(one -> "the " + one.all().size() + " under Equipment")
            .orElse("those usual at home");
  }

  private List<FormulaPage.Choice> choices(Formula formula) {
    List<FormulaPage.Choice> choices = new ArrayList<>();
    WeighOut weighOut = wetside.weighOut();
    for (FormulaStep step : formula.steps()) {
      List<String> names = weighOut.alternatives(step);
      if (formula.refusal().isEmpty() && !names.isEmpty()) {
        choices.add(
            new FormulaPage.Choice(FormulaWish.HAVE + step.order(), step.ingredient(), names));
      }
    }
    return choices;
  }

  static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    ctx.queryParamMap()
        .forEach((name, said) -> values.put(name, said.isEmpty() ? "" : said.get(0)));
    return FilledForm.of(values);
  }

  private static String cardAddress(Context ctx, Formula formula) {
    StringJoiner query = new StringJoiner("&", "?", "").setEmptyValue("");
    String typed = ctx.queryString();
    if (typed != null && !typed.isBlank()) {
      query.add(typed);
    }
    return FormulaAddress.of(formula.code()) + "/card.pdf" + query;
  }

  static Formula known(Context ctx, Wetside wetside) {
    String name = ctx.pathParam("formula");
    return wetside
        .formulaBook()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no formula " + name + "."));
  }
}
