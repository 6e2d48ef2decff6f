package org.wetside.web.strip;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.curves.ReadCurve;
import org.wetside.app.shelf.Today;
import org.wetside.core.sensitometry.Outlier;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;
import org.wetside.core.strip.StepLight;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The place Curves: {@code /curves}, {@code /curves/new}, {@code /curves/{number}}. */
public final class StripRoutes implements Routes {
  private static final String HERE = "/curves";
  private static final String NEW = HERE + "/new";
  private static final String ONE = HERE + "/{curve}";
  private static final String FORM = "strip/form.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public StripRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, this::all);
    routes.get(NEW, this::blank);
    routes.post(NEW, this::keep);
    routes.get(ONE, this::one);
    routes.get(ONE + "/change", this::again);
    routes.post(ONE + "/change", this::change);
    routes.post(ONE + "/withdraw", this::withdraw);
  }

  private void all(Context ctx) {
    pages.show(
        ctx,
        "strip/all.jte",
        new StripsPage(
            pages.sheet(ctx, Place.CURVES, "Curves"),
            StripGroup.of(wetside.sensitometry().keepStrips().all(), Pages.units(ctx))));
  }

  private void blank(Context ctx) {
    FilledForm form =
        FilledForm.of(
            Map.of(
                "light", StepLight.RELATIVE.word(), "day", Today.of(wetside.clock()).toString()));
    pages.show(ctx, FORM, form(ctx, form, NEW, ""));
  }

  private void keep(Context ctx) {
    if (ctx.formParam("from") != null) {
      handedOver(ctx);
      return;
    }
    StripForm form = StripForm.of(ctx, wetside.densitometry());
    Optional<FilmStrip> strip = form.strip();
    if (strip.isEmpty()) {
      pages.showRefused(ctx, FORM, form(ctx, form.shown(), NEW, ""));
      return;
    }
    KeptStrip kept = wetside.sensitometry().keepStrips().keep(strip.get());
    pages.goSaying(ctx, HERE + "/" + kept.id(), "Kept as curve " + kept.id() + ".");
  }

  /** Densities measured on a picture: what was done to the film is still to be said. */
  private void handedOver(Context ctx) {
    FilledForm measured = FilledForm.of(ctx);
    FilledForm form =
        FilledForm.of(
            Map.of(
                "light",
                StepLight.RELATIVE.word(),
                "day",
                Today.of(wetside.clock()).toString(),
                "columns",
                "step",
                "readings",
                measured.value("readings"),
                "baseFog",
                measured.value("baseFog"),
                "note",
                measured.value("from"),
                "instrument",
                measured.value("instrument"),
                "calibratedOn",
                measured.value("calibratedOn")));
    pages.show(ctx, FORM, form(ctx, form, NEW, ""));
  }

  private void again(Context ctx) {
    KeptStrip kept = known(ctx);
    FilledForm form = FilledForm.of(StripText.fields(kept.strip(), Pages.units(ctx)));
    pages.show(ctx, FORM, form(ctx, form, changePath(kept), String.valueOf(kept.id())));
  }

  private void change(Context ctx) {
    KeptStrip old = known(ctx);
    StripForm form = StripForm.of(ctx, wetside.densitometry());
    Optional<FilmStrip> strip = form.strip();
    if (strip.isEmpty()) {
      pages.showRefused(
          ctx, FORM, form(ctx, form.shown(), changePath(old), String.valueOf(old.id())));
      return;
    }
    KeptStrip kept = wetside.sensitometry().keepStrips().keepInPlaceOf(old.id(), strip.get());
    pages.goSaying(
        ctx,
        HERE + "/" + kept.id(),
        "Kept as curve " + kept.id() + " in place of " + old.id() + ".");
  }

  private void withdraw(Context ctx) {
    KeptStrip kept = known(ctx);
    boolean gone = wetside.sensitometry().keepStrips().withdraw(kept.id());
    pages.goSaying(
        ctx,
        HERE,
        gone ? "Curve " + kept.id() + " is used no more." : "It was out of use already.");
  }

  private StripFormPage form(Context ctx, FilledForm form, String path, String changes) {
    return new StripFormPage(
        pages.sheet(ctx, Place.CURVES, changes.isEmpty() ? "A new curve" : "Read again"),
        form,
        StripTools.of(wetside.densitometry(), form),
        path,
        changes);
  }

  private void one(Context ctx) {
    KeptStrip kept = known(ctx);
    FilmStrip strip = kept.strip();
    ReadCurve.Answer answer = new ReadCurve().answer(strip.curveReadings());
    String title = "Characteristic curve, " + StripText.name(strip) + ", " + StripText.time(strip);
    boolean absolute = strip.light().givesSpeed();
    pages.show(
        ctx,
        "strip/one.jte",
        new StripPage(
            pages.sheet(ctx, Place.CURVES, StripText.name(strip) + ", " + StripText.time(strip)),
            kept,
            StripAnswer.of(strip, answer),
            CurveDrawing.of(answer, StripText.time(strip), absolute, title, CurveDrawing.WIDE),
            CurveDrawing.of(answer, StripText.time(strip), absolute, title, CurveDrawing.NARROW),
            ResultRows.of(strip.light(), answer),
            ReadLine.of(strip, answer),
            baseFog(answer),
            advice(answer.curve().outliers()),
            MadeWithText.of(strip.with(), wetside.densitometry()),
            answer.results().seed(),
            familyPath(kept, Pages.units(ctx))));
  }

  private String familyPath(KeptStrip kept, org.wetside.core.quantity.Units units) {
    List<KeptStrip> alike =
        wetside.sensitometry().keepStrips().all().stream()
            .filter(other -> other.strip().isOfOneKindWith(kept.strip()))
            .toList();
    return StripGroup.of(alike, units).stream()
        .filter(StripGroup::isFamily)
        .map(StripGroup::familyPath)
        .findFirst()
        .orElse("");
  }

  private static String baseFog(ReadCurve.Answer answer) {
    var known = answer.curve().baseFog();
    return Digits.two(known.density().value())
        + (known.isFound()
            ? ", mean of the first " + known.steps() + " steps"
            : ", as you read it");
  }

  private static String advice(List<Outlier> outliers) {
    if (outliers.isEmpty()) {
      return "";
    }
    if (outliers.size() > 1) {
      return outliers.size() + " steps lie off a smooth curve by more than 0.03; read them again.";
    }
    Outlier one = outliers.get(0);
    return "The step at "
        + Digits.two(one.log10LuxSeconds())
        + " is off by "
        + Digits.two(Math.abs(one.read() - one.expected()))
        + "; read it again.";
  }

  private static String changePath(KeptStrip kept) {
    return HERE + "/" + kept.id() + "/change";
  }

  private KeptStrip known(Context ctx) {
    return StripApi.known(wetside, ctx.pathParam("curve"));
  }
}
