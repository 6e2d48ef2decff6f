package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.app.Wetside;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.KnownInstrument;
import org.wetside.app.shelf.Today;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The instruments on pages: all of them, one with its history, a new calibration. */
public final class InstrumentPages implements Routes {
  private static final String ALL = DensityAddress.INSTRUMENTS;
  private static final String ONE = ALL + "/{instrument}";
  private static final Map<String, String> FIELD_OF =
      Map.of(
          "name of the instrument", "name",
          "kind of instrument", "kind",
          "day of the calibration", "on",
          "tablet", "tablet",
          "method of calibration", "method");

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public InstrumentPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ALL, ctx -> showAll(ctx, FilledForm.empty()));
    routes.post(ALL, this::add);
    routes.get(ONE, ctx -> showOne(ctx, known(ctx)));
    routes.post(ONE + "/remove", this::remove);
    routes.get(ONE + "/calibrate", ctx -> showForm(ctx, known(ctx), opened(Map.of())));
    routes.post(ONE + "/calibrate", this::calibrate);
    routes.post("/curves/calibration", this::takeOver);
  }

  private Densitometry here() {
    return wetside.densitometry();
  }

  private void add(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      InstrumentBody body =
          new InstrumentBody(form.value("name"), form.value("kind"), form.value("note"));
      here().keepInstruments().add(body.described());
      pages.goSaying(
          ctx,
          DensityAddress.instrument(body.described().name()),
          "Kept. Calibrate it before it reads anything.");
    } catch (BadValueException refused) {
      showAll(ctx, refusing(form, refused));
    }
  }

  private void remove(Context ctx) {
    String name = known(ctx).instrument().name();
    here().keepInstruments().remove(name);
    pages.goSaying(ctx, ALL, "Took " + name + " away, with its calibrations.");
  }

  private void calibrate(Context ctx) {
    KnownInstrument known = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    String name = known.instrument().name();
    try {
      here()
          .calibrate()
          .by(
              new CalibrationBody(
                      form.value("tablet"),
                      form.value("on"),
                      form.value("method"),
                      form.value("seen"),
                      form.value("note"))
                  .of(name, Today.of(wetside.clock())));
      pages.goSaying(ctx, DensityAddress.instrument(name), "Calibrated; it counts from now on.");
    } catch (BadValueException refused) {
      showForm(ctx, known, refusing(form, refused));
    }
  }

  /** What was measured on a picture comes here, to be kept as a calibration. */
  private void takeOver(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    String name = form.value("instrument");
    KnownInstrument known =
        here()
            .keepInstruments()
            .find(name)
            .orElseThrow(() -> new BadValueException("instrument", name, "choose one of yours"));
    showForm(ctx, known, opened(Map.of("seen", form.value("seen"), "note", form.value("note"))));
  }

  private FilledForm opened(Map<String, String> typed) {
    Map<String, String> values = new LinkedHashMap<>(typed);
    values.put("on", Today.of(wetside.clock()).toString());
    return FilledForm.of(values);
  }

  private static FilledForm refusing(FilledForm form, BadValueException refused) {
    String field = FIELD_OF.getOrDefault(refused.thing(), "seen");
    return form.saying(form.values().containsKey(field) ? field : FilledForm.WHOLE, refused);
  }

  private void showAll(Context ctx, FilledForm form) {
    InstrumentsPage page =
        new InstrumentsPage(
            pages.sheet(ctx, Place.CURVES, "Instruments"),
            InstrumentsView.of(here().keepInstruments()).instruments(),
            here().keepTablets().all(),
            form);
    show(ctx, "density/instruments.jte", page, form);
  }

  private void showOne(Context ctx, KnownInstrument known) {
    pages.show(
        ctx,
        "density/instrument.jte",
        new InstrumentPage(
            pages.sheet(ctx, Place.CURVES, known.instrument().name()), InstrumentView.of(known)));
  }

  private void showForm(Context ctx, KnownInstrument known, FilledForm form) {
    List<String> tablets = here().keepTablets().all().stream().map(StepTablet::name).toList();
    CalibratePage page =
        new CalibratePage(
            pages.sheet(ctx, Place.CURVES, "Calibrate " + known.instrument().name()),
            known.instrument(),
            tablets,
            form);
    show(ctx, "density/calibrate.jte", page, form);
  }

  private void show(Context ctx, String template, Object page, FilledForm form) {
    if (form.isRefused()) {
      pages.showRefused(ctx, template, page);
    } else {
      pages.show(ctx, template, page);
    }
  }

  private KnownInstrument known(Context ctx) {
    String name = ctx.pathParam("instrument");
    return here()
        .keepInstruments()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no instrument " + name + "."));
  }
}
