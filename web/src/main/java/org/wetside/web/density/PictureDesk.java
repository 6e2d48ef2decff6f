package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.StoredPicture;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The page of one picture: patches drawn or typed, divided, measured, taken over. */
public final class PictureDesk implements Routes {
  private static final String ONE = DensityAddress.PATCHES + "/{picture}";
  private static final String TEMPLATE = "density/picture.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public PictureDesk(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ONE, this::open);
    routes.post(ONE, this::act);
    routes.post(ONE + "/readings.csv", this::csv);
  }

  private Densitometry here() {
    return wetside.densitometry();
  }

  private void open(Context ctx) {
    StoredPicture picture = known(ctx);
    show(ctx, picture, PatchRows.of(picture.patches(), FilledForm.empty()), null);
  }

  private void act(Context ctx) {
    StoredPicture picture = known(ctx);
    PatchRows typed = new PatchRows(FilledForm.of(ctx));
    if (typed.form().value("do").equals("divide")) {
      divide(ctx, picture, typed);
      return;
    }
    List<PatchRectangle> patches = new ArrayList<>();
    PatchRows checked = typed.checked(patches);
    if (checked.form().isRefused()) {
      show(ctx, picture, checked, null);
      return;
    }
    List<PatchMeasure> measures;
    try {
      measures = here().readPatches().of(picture.name(), patches);
    } catch (BadValueException refused) {
      show(ctx, picture, new PatchRows(typed.form().saying(FilledForm.WHOLE, refused)), null);
      return;
    }
    PatchesView bare = PatchesView.of(picture.name(), measures, null);
    try {
      show(
          ctx,
          picture,
          typed,
          PatchesView.of(picture.name(), measures, densities(typed, measures)));
    } catch (BadValueException refused) {
      String field = refused.thing().equals("flare") ? "flare" : "instrument";
      show(ctx, picture, new PatchRows(typed.form().saying(field, refused)), bare);
    }
  }

  private @Nullable DensitiesView densities(PatchRows typed, List<PatchMeasure> measures) {
    FilledForm form = typed.form();
    String instrument = form.value("instrument");
    if (instrument.isEmpty()) {
      return null;
    }
    FlareField flare = FlareField.parse(form.value("flare"));
    return DensitiesView.of(
        instrument,
        PatchesView.asking(measures, form.value("negative"), flare)
            .by(here().convertPatches(), instrument));
  }

  private void divide(Context ctx, StoredPicture picture, PatchRows typed) {
    FilledForm form = typed.form();
    try {
      List<PatchRectangle> patches = new ArrayList<>();
      PatchRows checked = typed.checked(patches);
      if (checked.form().isRefused()) {
        show(ctx, picture, checked, null);
        return;
      }
      String label = form.value("strip");
      PatchRectangle strip =
          patches.stream()
              .filter(one -> one.label().equalsIgnoreCase(label))
              .findFirst()
              .orElseThrow(
                  () -> new BadValueException("patch", label, "name one that is in the list"));
      patches.remove(strip);
      patches.addAll(strip.divided(whole(form, "steps"), whole(form, "first")));
      show(ctx, picture, PatchRows.of(patches, form), null);
    } catch (BadValueException refused) {
      show(ctx, picture, new PatchRows(form.saying("strip", refused)), null);
    }
  }

  private static int whole(FilledForm form, String field) {
    String text = form.value(field);
    if (!text.matches("\\d{1,3}")) {
      throw new BadValueException(
          field.equals("steps") ? "number of steps" : "number of the first step",
          text,
          "a whole number, for example 21");
    }
    return Integer.parseInt(text);
  }

  private void csv(Context ctx) {
    StoredPicture picture = known(ctx);
    PatchRows typed = new PatchRows(FilledForm.of(ctx));
    List<PatchRectangle> patches = new ArrayList<>();
    PatchRows checked = typed.checked(patches);
    if (checked.form().isRefused()) {
      show(ctx, picture, checked, null);
      return;
    }
    List<PatchMeasure> measures = here().readPatches().of(picture.name(), patches);
    PatchesView view = PatchesView.of(picture.name(), measures, densities(typed, measures));
    ctx.contentType("text/csv; charset=utf-8");
    ctx.header("Content-Disposition", "attachment; filename=\"readings.csv\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(PatchTable.csv(view));
  }

  private void show(
      Context ctx, StoredPicture picture, PatchRows rows, @Nullable PatchesView result) {
    Map<String, Boolean> instruments = new LinkedHashMap<>();
    here().keepInstruments().all().stream()
        .filter(known -> known.instrument().kind().seesPixels())
        .forEach(known -> instruments.put(known.instrument().name(), known.newest().isPresent()));
    PicturePage page =
        new PicturePage(
            pages.sheet(ctx, Place.CURVES, picture.name()),
            PictureView.of(picture),
            rows,
            instruments,
            result);
    if (rows.form().isRefused()) {
      pages.showRefused(ctx, TEMPLATE, page);
    } else {
      pages.show(ctx, TEMPLATE, page);
    }
  }

  private StoredPicture known(Context ctx) {
    String name = ctx.pathParam("picture");
    return here()
        .keepPictures()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no picture " + name + "."));
  }
}
