package org.wetside.web.density;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.wetside.app.Wetside;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.StoredPicture;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;

/** Pictures that are measured, over HTTP: {@code /api/pictures}. */
public final class PictureApi implements Routes {
  private static final String ALL = "/api/pictures";
  private static final String ONE = ALL + "/{picture}";

  private final Wetside wetside;

  /** Over one open home. */
  public PictureApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get(ALL, "The pictures kept in the home to be measured")
            .answers(PicturesView.class, ctx -> PicturesView.of(here().keepPictures())));
    routes.addEndpoint(
        Operation.post(ALL, "Keep a picture; one that cannot be measured is refused")
            .query("name", "name of the file, ending in .tif or .tiff")
            .takes("image/tiff", "a linear 16-bit TIFF")
            .gives(HttpStatus.CREATED, PictureView.class)
            .handledBy(this::take));
    routes.addEndpoint(
        Operation.put(ONE, "Say whether a picture is linear, where its file does not")
            .answers(DeclaredBody.class, PictureView.class, this::declare));
    routes.addEndpoint(
        Operation.delete(ONE, "Take a picture out of the home; answers with those left")
            .answers(PicturesView.class, this::remove));
    routes.addEndpoint(
        Operation.post(ONE + "/patches", "Measure patches, and say their densities")
            .answers(PatchesBody.class, PatchesView.class, this::measure));
  }

  private Densitometry here() {
    return wetside.densitometry();
  }

  private void take(Context ctx) {
    String name = Objects.requireNonNullElse(ctx.queryParam("name"), "");
    InputStream content = ctx.bodyInputStream();
    try {
      StoredPicture kept = here().keepPictures().take(name, content);
      ctx.status(HttpStatus.CREATED).json(PictureView.of(kept));
    } finally {
      readToItsEnd(content);
    }
  }

  /**
   * A name can be refused before the picture has come. Whoever is still sending reads no answer:
   * the connection would break under the picture, and the reason of the refusal be lost.
   */
  private static void readToItsEnd(InputStream content) {
    try {
      content.transferTo(OutputStream.nullOutputStream());
    } catch (IOException gone) {
      throw new UncheckedIOException("reading a picture that was refused: " + gone, gone);
    }
  }

  private PictureView declare(Context ctx, DeclaredBody body) {
    here().keepPictures().declare(known(ctx).name(), body.linear());
    return PictureView.of(known(ctx));
  }

  private PicturesView remove(Context ctx) {
    here().keepPictures().remove(known(ctx).name());
    return PicturesView.of(here().keepPictures());
  }

  private PatchesView measure(Context ctx, PatchesBody body) {
    String name = known(ctx).name();
    List<PatchMeasure> measures = here().readPatches().of(name, body.rectangles());
    return PatchesView.of(
        name,
        measures,
        body.instrument() == null
            ? null
            : DensitiesView.of(
                body.instrument(),
                PatchesView.asking(
                        measures, body.negative(), new FlareField(body.flareShare(), body.opaque()))
                    .by(here().convertPatches(), body.instrument())));
  }

  private StoredPicture known(Context ctx) {
    String name = ctx.pathParam("picture");
    return here()
        .keepPictures()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no picture " + name + "."));
  }
}
