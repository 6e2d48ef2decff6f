package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.curves.KeepStrips;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.strip.KeptStrip;
import org.wetside.web.curves.CurveView;
import org.wetside.web.strip.ReadStripView;
import org.wetside.web.strip.StripView;
import org.wetside.web.strip.StripsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside curves}: strips of film that were measured and kept. */
@Command(
    name = "curves",
    description = {
      "List the strips of film that were measured, show one with its curve, or:",
      "  --add FILE and what was done to the film; NUMBER --again FILE …; NUMBER --withdraw",
      "The tablet and the instrument are chosen by name among those that are written down."
    })
final class CurvesCommand extends HomeCommand<KeptCurves> {
  private static final String ALL = "/api/curves";

  @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "number of one")
  @Nullable Long number;

  @Option(
      names = "--add",
      paramLabel = "FILE",
      description = "keep readings: a CSV of logH,density or step,density or stops,density")
  @Nullable Path add;

  @Option(
      names = "--again",
      paramLabel = "FILE",
      description = "read anew: takes the place of that number, which stays on file")
  @Nullable Path again;

  @Option(names = "--withdraw", description = "use it no more; it stays on file")
  boolean withdraw;

  @Mixin StripOptions said = new StripOptions();

  @Override
  boolean writes() {
    return add != null || again != null || withdraw;
  }

  @Override
  KeptCurves answerHere(Wetside wetside) {
    check();
    KeepStrips strips = wetside.sensitometry().keepStrips();
    if (add != null) {
      return shown(wetside, strips.keep(said.read(add).strip(wetside.densitometry())));
    }
    if (number == null) {
      return KeptCurves.all(StripsView.of(wetside));
    }
    KeptStrip kept =
        strips
            .find(number)
            .orElseThrow(
                () ->
                    new BadValueException(
                        "curve", String.valueOf(number), "there is none of that number"));
    if (again != null) {
      return shown(
          wetside, strips.keepInPlaceOf(kept.id(), said.read(again).strip(wetside.densitometry())));
    }
    if (withdraw) {
      var unused = strips.withdraw(kept.id());
      return KeptCurves.all(StripsView.of(wetside));
    }
    return shown(wetside, kept);
  }

  private static KeptCurves shown(Wetside wetside, KeptStrip kept) {
    return KeptCurves.one(ReadStripView.of(kept, wetside.densitometry()));
  }

  @Override
  ServerRequest request() {
    check();
    if (add != null) {
      return ServerRequest.post(ALL, "application/json", JsonText.of(said.read(add)));
    }
    if (again != null) {
      return new ServerRequest(
          "PUT", ALL + "/" + number, "application/json", JsonText.of(said.read(again)));
    }
    if (withdraw) {
      return new ServerRequest("DELETE", ALL + "/" + number, "", "");
    }
    return ServerRequest.get(number == null ? ALL : ALL + "/" + number);
  }

  @Override
  Optional<KeptCurves> answerThere(ServerCall server) {
    return withdraw || (add == null && number == null)
        ? server.ask(request(), StripsView.class).map(KeptCurves::all)
        : server.ask(request(), ReadStripView.class).map(KeptCurves::one);
  }

  private void check() {
    if (Stream.of(add != null, again != null, withdraw).filter(wish -> wish).count() > 1) {
      throw new BadValueException(
          "wish", "two at once", "choose one of --add, --again, --withdraw");
    }
    if ((again != null || withdraw) && number == null) {
      throw new BadValueException("curve", "", "say its number");
    }
    if (add != null && number != null) {
      throw new BadValueException(
          "curve",
          String.valueOf(number),
          "a new one gets its own number; to read that one anew there is --again");
    }
    if (add == null && again == null && said.areSaid()) {
      throw new BadValueException(
          "wish", "no readings", "what was done to a strip goes with --add FILE or --again FILE");
    }
  }

  @Override
  Class<KeptCurves> view() {
    return KeptCurves.class;
  }

  @Override
  void print(KeptCurves view, PrintWriter out) {
    if (view.curves().isEmpty()) {
      out.println("No curve is kept.");
    }
    for (StripView one : view.curves()) {
      out.println(line(one));
    }
    CurveView shows = view.shows();
    if (shows != null) {
      StripView one = view.curves().get(0);
      if (!one.tabletName().isEmpty()) {
        out.println("  tablet " + one.tabletName());
      }
      if (!one.instrument().isEmpty()) {
        out.println(
            "  read by "
                + one.instrument()
                + (one.calibratedOn() == null ? "" : ", calibration of " + one.calibratedOn()));
      }
      CurveLines.print(shows, out);
      if (!view.claim().isEmpty()) {
        out.println(view.claim());
      }
    }
  }

  private static String line(StripView one) {
    long seconds = Math.round(one.minutes() * 60);
    return String.format(
        Locale.ROOT,
        "%d  %s in %s%s, %d:%02d%s, light %s, %d readings",
        one.id(),
        one.film(),
        one.developer(),
        one.dilution().startsWith("not") ? "" : " " + one.dilution(),
        seconds / 60,
        seconds % 60,
        one.developedOn() == null ? "" : ", " + one.developedOn(),
        one.light(),
        one.readings().size());
  }
}
