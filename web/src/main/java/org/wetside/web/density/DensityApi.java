package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import org.wetside.app.Wetside;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.KnownInstrument;
import org.wetside.app.shelf.Today;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** Instruments and tablets over HTTP: {@code /api/instruments}, {@code /api/tablets}. */
public final class DensityApi implements Routes {
  private static final String TABLETS = "/api/tablets";
  private static final String INSTRUMENTS = "/api/instruments";
  private static final String ONE = INSTRUMENTS + "/{instrument}";

  private final Wetside wetside;

  /** Over one open home. */
  public DensityApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(TABLETS, "The step tablets with densities of their own")
            .answers(TabletsView.class, ctx -> TabletsView.of(here().keepTablets())));
    routes.addEndpoint(
        Operation.put(TABLETS, "Write a tablet down, or say it anew; answers with all")
            .answers(TabletView.class, TabletsView.class, (ctx, body) -> put(body)));
    routes.addEndpoint(
        Operation.delete(TABLETS + "/{tablet}", "Take a tablet away; answers with those left")
            .answers(TabletsView.class, this::withoutTablet));
    routes.addEndpoint(
        Operation.get(INSTRUMENTS, "The instruments that read density, with calibrations")
            .answers(InstrumentsView.class, ctx -> InstrumentsView.of(here().keepInstruments())));
    routes.addEndpoint(
        Operation.post(INSTRUMENTS, "Add a densitometer, scanner or camera")
            .creates(InstrumentBody.class, InstrumentView.class, (ctx, body) -> add(body)));
    routes.addEndpoint(
        Operation.get(ONE, "One instrument: residuals, limits and drift")
            .answers(InstrumentView.class, ctx -> InstrumentView.of(known(ctx))));
    routes.addEndpoint(
        Operation.delete(ONE, "Take an instrument away; answers with those left")
            .answers(InstrumentsView.class, this::withoutInstrument));
    routes.addEndpoint(
        Operation.post(ONE + "/calibrations", "Calibrate it by a step tablet")
            .creates(CalibrationBody.class, InstrumentView.class, this::calibrate));
    routes.addEndpoint(
        Operation.post(ONE + "/densities", "Densities of patches by its newest calibration")
            .answers(DensitiesBody.class, DensitiesView.class, this::densities));
  }

  private Densitometry here() {
    return wetside.densitometry();
  }

  private TabletsView put(TabletView body) {
    here().keepTablets().put(body.tablet());
    return TabletsView.of(here().keepTablets());
  }

  private TabletsView withoutTablet(Context ctx) {
    String name = ctx.pathParam("tablet");
    if (!here().keepTablets().remove(name)) {
      throw new NotFoundResponse("There is no tablet " + name + ".");
    }
    return TabletsView.of(here().keepTablets());
  }

  private InstrumentView add(InstrumentBody body) {
    here().keepInstruments().add(body.described());
    return InstrumentView.of(here().keepInstruments().find(body.described().name()).orElseThrow());
  }

  private InstrumentsView withoutInstrument(Context ctx) {
    here().keepInstruments().remove(known(ctx).instrument().name());
    return InstrumentsView.of(here().keepInstruments());
  }

  private InstrumentView calibrate(Context ctx, CalibrationBody body) {
    String name = known(ctx).instrument().name();
    here().calibrate().by(body.of(name, Today.of(wetside.clock())));
    return InstrumentView.of(known(ctx));
  }

  private DensitiesView densities(Context ctx, DensitiesBody body) {
    String name = known(ctx).instrument().name();
    return DensitiesView.of(name, body.by(here().convertPatches(), name));
  }

  private KnownInstrument known(Context ctx) {
    String name = ctx.pathParam("instrument");
    return here()
        .keepInstruments()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no instrument " + name + "."));
  }
}
