package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.web.density.Claim;
import org.wetside.web.density.DensitiesBody;
import org.wetside.web.density.DensitiesView;
import org.wetside.web.density.FlareField;
import org.wetside.web.density.PatchesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside patches picture.tif --rectangles r.csv}. */
@Command(
    name = "patches",
    description = {
      "Measure rectangles of a linear 16-bit TIFF, and say their densities.",
      "The rectangles are a CSV with the header label,x,y,width,height, in pixels."
    })
final class PatchesCommand extends HomeCommand<PatchesView> {
  @Parameters(paramLabel = "PICTURE", description = "a linear 16-bit TIFF")
  @Nullable Path picture;

  @Option(names = "--rectangles", paramLabel = "FILE", description = "what is measured")
  @Nullable Path rectangles;

  @Option(
      names = "--linear",
      description = "it was scanned linear: say so where the file does not itself")
  boolean linear;

  @Option(
      names = "--instrument",
      paramLabel = "NAME",
      description = "densities by its newest calibration; without it pixel values only")
  @Nullable String instrument;

  @Option(
      names = "--negative",
      paramLabel = "KIND",
      description = "silver (usual); stained and colour are refused")
  @Nullable String negative;

  @Option(
      names = "--flare",
      paramLabel = "SHARE|PATCH",
      description = {
        "light of the clear surround in dark patches: a share, for example 0.005, or the label of",
        "a patch that lets no light through, which it is found from"
      })
  @Nullable String flare;

  private @Nullable List<PatchMeasure> measures;

  @Override
  Optional<PatchesView> answerAnywhere() {
    return instrument == null ? Optional.of(view(null)) : Optional.empty();
  }

  @Override
  PatchesView answerHere(Wetside wetside) {
    String name = String.valueOf(instrument);
    return view(DensitiesView.of(name, asking().by(wetside.densitometry().convertPatches(), name)));
  }

  @Override
  ServerRequest request() {
    return ServerRequest.post(
        "/api/instruments/" + ServerRequest.inPath(String.valueOf(instrument)) + "/densities",
        "application/json",
        JsonText.of(asking()));
  }

  @Override
  Optional<PatchesView> answerThere(ServerCall server) {
    return server.ask(request(), DensitiesView.class).map(this::view);
  }

  @Override
  Class<PatchesView> view() {
    return PatchesView.class;
  }

  private DensitiesBody asking() {
    return PatchesView.asking(measures(), negative, FlareField.parse(flare));
  }

  private PatchesView view(@Nullable DensitiesView densities) {
    return PatchesView.of(
        picture == null ? "" : String.valueOf(picture.getFileName()), measures(), densities);
  }

  private List<PatchMeasure> measures() {
    List<PatchMeasure> known = measures;
    if (known == null) {
      known = Picture.measured(picture, rectangles, linear);
      measures = known;
    }
    return known;
  }

  @Override
  int exitCode(PatchesView view) {
    DensitiesView densities = view.densities();
    if (densities == null) {
      return ExitCode.DONE;
    }
    for (DensitiesView.DensityView one : densities.patches()) {
      if (one.density() != null) {
        return ExitCode.DONE;
      }
    }
    return ExitCode.NO_ANSWER;
  }

  @Override
  void print(PatchesView view, PrintWriter out) {
    DensitiesView densities = view.densities();
    out.println(
        "patch  "
            + view.channel()
            + " mean  sd  pixels  cut off"
            + (densities == null ? "" : "  density  net"));
    for (int i = 0; i < view.patches().size(); i++) {
      PatchesView.PatchView one = view.patches().get(i);
      out.println(
          one.label()
              + "  "
              + Claim.pixel(one.mean())
              + "  "
              + Claim.pixel(one.sd())
              + "  "
              + one.pixels()
              + "  "
              + one.clippedPixels()
              + (densities == null ? "" : "  " + words(densities.patches().get(i))));
    }
    if (densities != null) {
      out.println(
          "by "
              + densities.instrument()
              + ", calibrated "
              + densities.calibratedOn()
              + " by "
              + densities.tablet()
              + "; nothing denser than "
              + Claim.density(densities.densest())
              + " is read");
      if (!densities.flare().isEmpty()) {
        out.println(densities.flare());
      }
      out.println(densities.claim());
    }
  }

  private static String words(DensitiesView.DensityView read) {
    if (read.density() == null) {
      return "not read: " + read.notRead();
    }
    return Claim.density(read.density())
        + "  "
        + (read.net() == null ? "" : Claim.density(read.net()));
  }
}
