package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.formula.HowTo;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.page.BalanceText;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The balance and the measures: {@code /equipment/measures}, {@code /api/measures}. */
public final class MeasureRoutes implements Routes {
  private static final String TEMPLATE = "equipment/measures.jte";
  private static final String HERE = "/equipment/measures";
  private static final String API = "/api/measures";
  private static final String BALANCE = "/api/balance";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public MeasureRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, ctx -> pages.show(ctx, TEMPLATE, page(ctx, kept(), FilledForm.empty())));
    routes.post(HERE, this::keepMeasure);
    routes.post(HERE + "/remove", this::removeMeasure);
    routes.post(HERE + "/balance", this::keepBalance);
    routes.addEndpoint(
        Operation.get(API, "The balance, the syringes and graduates of the house")
            .answers(MeasuresView.class, ctx -> MeasuresView.of(wetside)));
    routes.addEndpoint(
        Operation.put(API, "Write a syringe or graduate down, or say it anew; answers with all")
            .answers(OwnMeasureView.class, MeasuresView.class, (ctx, body) -> put(body)));
    routes.addEndpoint(
        Operation.delete(API + "/{name}", "Take a measure away; answers with those left")
            .answers(MeasuresView.class, this::taken));
    routes.addEndpoint(
        Operation.put(BALANCE, "Say the smallest step the balance shows; answers with all")
            .answers(BalanceBody.class, MeasuresView.class, (ctx, body) -> put(body)));
    routes.addEndpoint(
        Operation.delete(BALANCE, "Forget the balance; answers with the measures")
            .answers(MeasuresView.class, ctx -> forgotten()));
  }

  private MeasuresView put(OwnMeasureView body) {
    wetside.keepMeasures().put(body.measure());
    return MeasuresView.of(wetside);
  }

  private MeasuresView put(BalanceBody body) {
    wetside.keepMeasures().put(body.balance());
    return MeasuresView.of(wetside);
  }

  private MeasuresView taken(Context ctx) {
    String name = ctx.pathParam("name");
    if (!wetside.keepMeasures().remove(name)) {
      throw new NotFoundResponse("There is no measure " + name + ".");
    }
    return MeasuresView.of(wetside);
  }

  private MeasuresView forgotten() {
    if (!wetside.keepMeasures().removeBalance()) {
      throw new NotFoundResponse("No balance is written down.");
    }
    return MeasuresView.of(wetside);
  }

  private void keepBalance(Context ctx) {
    FieldReader read = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    if (read.form().isBlank("step") && wetside.keepMeasures().removeBalance()) {
      pages.goSaying(ctx, HERE, "The balance is forgotten.");
      return;
    }
    Optional<Balance> balance = read.required("step", "balance step", BalanceText::parse);
    if (balance.isPresent()) {
      wetside.keepMeasures().put(balance.get());
      pages.goSaying(ctx, HERE, "Kept: a balance that shows " + words(balance.get()) + ".");
      return;
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, read.form(), FilledForm.empty()));
  }

  private void keepMeasure(Context ctx) {
    FieldReader read = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Volume> holds = read.requiredVolume("holds", "volume of the measure");
    Optional<Volume> division = read.requiredVolume("division", "division of the measure");
    if (holds.isPresent() && division.isPresent()) {
      try {
        Measure measure = OwnMeasureView.of(read.form().value("name"), holds.get(), division.get());
        wetside.keepMeasures().put(measure);
        pages.goSaying(ctx, HERE, "Kept " + measure.name() + ".");
        return;
      } catch (BadValueException refusal) {
        read.refuse(fieldOf(refusal), refusal);
      }
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, kept(), read.form()));
  }

  private static String fieldOf(BadValueException refusal) {
    return switch (refusal.thing()) {
      case "name of the measure" -> "name";
      case "division of the measure" -> "division";
      case "measure" -> "holds";
      default -> FilledForm.WHOLE;
    };
  }

  private void removeMeasure(Context ctx) {
    String name = String.valueOf(ctx.formParam("name"));
    boolean removed = wetside.keepMeasures().remove(name);
    pages.goSaying(
        ctx, HERE, removed ? "Took " + name + " away." : "There is no measure " + name + ".");
  }

  private FilledForm kept() {
    return wetside
        .keepMeasures()
        .balance()
        .map(one -> FilledForm.of(Map.of("step", words(one))))
        .orElse(FilledForm.empty());
  }

  private MeasuresPage page(Context ctx, FilledForm balance, FilledForm measure) {
    Units units = Pages.units(ctx);
    return new MeasuresPage(
        pages.sheet(ctx, Place.EQUIPMENT, "Balance and measures"),
        wetside.keepMeasures().balance().map(MeasureRoutes::words),
        wetside.keepMeasures().all().stream().map(one -> line(one, units)).toList(),
        balance,
        measure);
  }

  private static MeasuresPage.Line line(Measure measure, Units units) {
    return new MeasuresPage.Line(
        measure.name(),
        units.words(measure.capacity()),
        measure.division().toString(),
        "±" + measure.division().times(0.5));
  }

  private static String words(Balance balance) {
    return HowTo.grams(balance.step().grams());
  }
}
