package org.wetside.web.formula;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.core.chemistry.Formula;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.contract.OneOrList;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** Formulas over HTTP: {@code /api/formulas}. */
public final class FormulaApi implements Routes {
  private static final String ALL = "/api/formulas";
  private static final String ONE = ALL + "/{formula}";
  private static final OneOrList<FormulasView.FormulaLineView, FormulasView> SHAPE =
      new OneOrList<>(FormulasView.FormulaLineView.class, FormulasView.class, FormulasView::new);

  private final Wetside wetside;

  /** Over one open home. */
  public FormulaApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The formulas there are, those on file first")
            .answers(FormulasView.class, ctx -> FormulasView.of(wetside.formulaBook().all())));
    routes.addEndpoint(
        SHAPE
            .on(Operation.post(ALL, "Keep a formula of one's own"), HttpStatus.CREATED)
            .takes(FormulaBody.class)
            .handledBy(this::keep));
    routes.addEndpoint(
        Operation.get(ONE, "A formula weighed out for a volume, or only shown")
            .query(FormulaQuery.class)
            .answers(FormulaView.class, this::weighedOut));
    routes.addEndpoint(
        SHAPE
            .on(Operation.delete(ONE, "Take a formula of one's own away"), HttpStatus.OK)
            .handledBy(this::remove));
  }

  private void keep(Context ctx) {
    Formula kept = wetside.keepFormula().keep(Json.read(ctx, FormulaBody.class).toOwn());
    ctx.status(HttpStatus.CREATED);
    SHAPE.answer(ctx, FormulasView.FormulaLineView.of(kept));
  }

  private FormulaView weighedOut(Context ctx) {
    String name = known(ctx);
    FormulaQuery query = Query.read(ctx, FormulaQuery.class);
    return FormulaView.of(wetside.weighOut().answer(query.question(name)));
  }

  private void remove(Context ctx) {
    SHAPE.answer(ctx, FormulasView.FormulaLineView.of(wetside.keepFormula().remove(known(ctx))));
  }

  private String known(Context ctx) {
    String name = ctx.pathParam("formula");
    return wetside
        .formulaBook()
        .find(name)
        .map(Formula::code)
        .orElseThrow(() -> new NotFoundResponse("There is no formula " + name + "."));
  }
}
