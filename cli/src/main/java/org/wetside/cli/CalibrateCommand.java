package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.Today;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.density.CalibrationBody;
import org.wetside.web.density.InstrumentView;
import org.wetside.web.density.PatchesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside calibrate INSTRUMENT --tablet T --picture t.tif --rectangles r.csv}. */
@Command(
    name = "calibrate",
    description = "Calibrate a densitometer, scanner or camera by a step tablet.")
final class CalibrateCommand extends HomeCommand<InstrumentView> {
  @Parameters(paramLabel = "INSTRUMENT", description = "name of one")
  String instrument = "";

  @Option(names = "--tablet", paramLabel = "NAME", description = "the step tablet")
  @Nullable String tablet;

  @Option(
      names = "--seen",
      paramLabel = "FILE",
      description = "lines step,grey or step,red,green,blue; step,density for a densitometer")
  @Nullable Path seen;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "in place of --seen: a linear 16-bit TIFF of the tablet, with --rectangles")
  @Nullable Path picture;

  @Option(
      names = "--rectangles",
      paramLabel = "FILE",
      description = "lines label,x,y,width,height; the labels are the steps")
  @Nullable Path rectangles;

  @Option(
      names = "--linear",
      description = "it was scanned linear: say so where the file does not itself")
  boolean linear;

  @Option(names = "--day", paramLabel = "DAY", description = "when it was done; else today")
  @Nullable String day;

  @Option(names = "--method", paramLabel = "WORD", description = "formula (usual) or table")
  @Nullable String method;

  @Option(names = "--note", paramLabel = "TEXT", description = "settings, light, picture")
  @Nullable String note;

  @Override
  boolean writes() {
    return true;
  }

  @Override
  InstrumentView answerHere(Wetside wetside) {
    wetside.densitometry().calibrate().by(body().of(instrument, Today.of(HomeCommand.CLOCK)));
    return InstrumentView.of(
        wetside.densitometry().keepInstruments().find(instrument).orElseThrow());
  }

  @Override
  ServerRequest request() {
    return ServerRequest.post(
        "/api/instruments/" + ServerRequest.inPath(instrument) + "/calibrations",
        "application/json",
        JsonText.of(body()));
  }

  @Override
  Class<InstrumentView> view() {
    return InstrumentView.class;
  }

  private CalibrationBody body() {
    if ((seen == null) == (picture == null)) {
      throw new BadValueException(
          "what it saw",
          seen == null ? "not said" : "said twice",
          "give --seen FILE or --picture FILE with --rectangles FILE, one of the two");
    }
    return new CalibrationBody(tablet, day, method, lines(), note);
  }

  private String lines() {
    return seen != null
        ? Picture.text(seen)
        : PatchesView.of("", Picture.measured(picture, rectangles, linear), null).seenLines();
  }

  @Override
  void print(InstrumentView view, PrintWriter out) {
    InstrumentsCommand.details(view, out);
  }
}
