package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.wetside.app.Wetside;
import org.wetside.app.density.KeepPictures;
import org.wetside.app.density.StoredPicture;
import org.wetside.app.picture.Preview;
import org.wetside.app.picture.TiffPicture;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The pictures on pages: sent, declared linear, seen, taken away. */
public final class PatchPages implements Routes {
  private static final String ALL = DensityAddress.PATCHES;
  private static final String ONE = ALL + "/{picture}";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public PatchPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ALL, ctx -> showAll(ctx, FilledForm.empty()));
    routes.post(ALL, this::take);
    routes.get(ONE + "/view.jpg", this::view);
    routes.post(ONE + "/declare", this::declare);
    routes.post(ONE + "/remove", this::remove);
  }

  private KeepPictures pictures() {
    return wetside.densitometry().keepPictures();
  }

  private void take(Context ctx) {
    UploadedFile file = ctx.uploadedFile("file");
    if (file == null || file.size() == 0) {
      showAll(ctx, FilledForm.empty().saying("file", "No file was chosen."));
      return;
    }
    try (InputStream content = file.content()) {
      StoredPicture kept = pictures().take(file.filename(), content);
      pages.goSaying(ctx, DensityAddress.picture(kept.name()), "Kept " + kept.name() + ".");
    } catch (BadValueException refused) {
      showAll(ctx, FilledForm.empty().saying("file", refused));
    } catch (IOException failure) {
      throw new UncheckedIOException("the file sent", failure);
    }
  }

  private void declare(Context ctx) {
    String name = ctx.pathParam("picture");
    boolean linear = "yes".equals(ctx.formParam("linear"));
    pictures().declare(name, linear);
    pages.goSaying(
        ctx,
        DensityAddress.picture(name),
        linear ? "Taken as linear, on your word." : "Not taken as linear: nothing is measured.");
  }

  private void remove(Context ctx) {
    String name = ctx.pathParam("picture");
    boolean removed = pictures().remove(name);
    pages.goSaying(
        ctx, ALL, removed ? "Took " + name + " away." : "There is no picture " + name + ".");
  }

  /** A region as an 8-bit view; the browser keeps it as long as the file is the same. */
  private void view(Context ctx) {
    String name = ctx.pathParam("picture");
    Path file =
        pictures()
            .file(name)
            .orElseThrow(() -> new NotFoundResponse("There is no picture " + name + "."));
    Rectangle region =
        new Rectangle(
            number(ctx, "x"), number(ctx, "y"), number(ctx, "width"), number(ctx, "height"));
    try (TiffPicture picture = TiffPicture.open(file)) {
      byte[] jpeg = Preview.jpeg(picture, region, number(ctx, "size"));
      ctx.status(HttpStatus.OK).contentType("image/jpeg");
      ctx.header("Cache-Control", "private, max-age=300");
      ctx.result(jpeg);
    }
  }

  private static int number(Context ctx, String name) {
    String text = String.valueOf(ctx.queryParam(name));
    if (!text.matches("\\d{1,7}")) {
      throw new BadValueException(name, text, "a whole number of pixels");
    }
    return Integer.parseInt(text);
  }

  private void showAll(Context ctx, FilledForm form) {
    PicturesPage page =
        new PicturesPage(
            pages.sheet(ctx, Place.CURVES, "Pictures to measure"),
            PicturesView.of(pictures()).pictures(),
            form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "density/pictures.jte", page);
    } else {
      pages.show(ctx, "density/pictures.jte", page);
    }
  }
}
