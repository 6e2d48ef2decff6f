package org.wetside.web.curves;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.wetside.app.curves.ContrastTable;
import org.wetside.app.curves.FindContrastTime;
import org.wetside.app.curves.ReadCurve;
import org.wetside.app.curves.StepTable;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;

/** {@code POST /api/curve} and {@code POST /api/contrast}: computed, nothing is kept. */
public final class CurveRoutes implements Routes {
  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.post("/api/curve", "Speed and contrast that the readings of a curve show")
            .query(CurveQuery.class)
            .takes("text/csv", "columns logH,density; one reading a row")
            .answers(CurveView.class, CurveRoutes::curve));
    routes.addEndpoint(
        Operation.post("/api/contrast", "The time for a contrast, from contrast against time")
            .query(ContrastQuery.class, "aim")
            .takes("text/csv", "columns minutes,contrast; one point a row")
            .answers(ContrastView.class, CurveRoutes::contrast));
  }

  private static CurveView curve(Context ctx) {
    CurveQuery query = Query.read(ctx, CurveQuery.class);
    return CurveView.of(new ReadCurve().answer(query.readings(StepTable.parse(ctx.body()))));
  }

  private static ContrastView contrast(Context ctx) {
    ContrastQuery query = Query.read(ctx, ContrastQuery.class);
    return ContrastView.of(
        new FindContrastTime().answer(ContrastTable.parse(ctx.body()), query.gradient()));
  }
}
