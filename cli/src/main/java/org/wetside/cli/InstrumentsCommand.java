package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.density.KeepInstruments;
import org.wetside.app.density.KnownInstrument;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.density.CalibrationView;
import org.wetside.web.density.Claim;
import org.wetside.web.density.DriftView;
import org.wetside.web.density.InstrumentBody;
import org.wetside.web.density.InstrumentView;
import org.wetside.web.density.InstrumentsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside instruments}: what reads density, and how far it can be trusted. */
@Command(
    name = "instruments",
    description = "List what reads density, show one with residuals and drift, add or remove one.")
final class InstrumentsCommand extends HomeCommand<InstrumentsView> {
  private static final String ALL = "/api/instruments";

  @Parameters(arity = "0..1", paramLabel = "INSTRUMENT", description = "name of one")
  @Nullable String name;

  @Option(
      names = "--add",
      paramLabel = "KIND",
      description = "write it down: densitometer, scanner or camera")
  @Nullable String add;

  @Option(names = "--note", paramLabel = "TEXT", description = "with --add: settings that stay")
  @Nullable String note;

  @Option(names = "--remove", description = "take it away with its calibrations")
  boolean remove;

  @Override
  boolean writes() {
    return remove || add != null;
  }

  @Override
  InstrumentsView answerHere(Wetside wetside) {
    check();
    KeepInstruments instruments = wetside.densitometry().keepInstruments();
    if (name == null) {
      return InstrumentsView.of(instruments);
    }
    if (add != null) {
      instruments.add(body().described());
    } else if (remove) {
      instruments.remove(known(instruments).instrument().name());
      return InstrumentsView.of(instruments);
    }
    return new InstrumentsView(List.of(InstrumentView.of(known(instruments))));
  }

  private KnownInstrument known(KeepInstruments instruments) {
    String wanted = String.valueOf(name);
    return instruments
        .find(wanted)
        .orElseThrow(
            () -> new BadValueException("instrument", wanted, "there is none of that name"));
  }

  private InstrumentBody body() {
    return new InstrumentBody(name, add, note);
  }

  private void check() {
    if (remove && add != null) {
      throw new BadValueException("wish", "two at once", "choose one of --add, --remove");
    }
    if (name == null && writes()) {
      throw new BadValueException("instrument", "", "say its name, for example flatbed");
    }
  }

  @Override
  ServerRequest request() {
    check();
    if (name == null) {
      return ServerRequest.get(ALL);
    }
    String one = ALL + "/" + ServerRequest.inPath(name);
    if (add != null) {
      return ServerRequest.post(ALL, "application/json", JsonText.of(body()));
    }
    return remove ? new ServerRequest("DELETE", one, "", "") : ServerRequest.get(one);
  }

  /** One that is asked for alone comes without the list around it. */
  @Override
  Optional<InstrumentsView> answerThere(ServerCall server) {
    return name == null || remove
        ? server.ask(request(), InstrumentsView.class)
        : server.ask(request(), InstrumentView.class).map(one -> new InstrumentsView(List.of(one)));
  }

  @Override
  Class<InstrumentsView> view() {
    return InstrumentsView.class;
  }

  @Override
  void print(InstrumentsView view, PrintWriter out) {
    if (view.instruments().isEmpty()) {
      out.println(
          "Nothing reads density yet; write one down: wetside instruments flatbed --add scanner");
    }
    for (InstrumentView one : view.instruments()) {
      if (name != null) {
        details(one, out);
      } else {
        out.println(headline(one));
      }
    }
  }

  private static String headline(InstrumentView view) {
    CalibrationView newest = view.newest();
    return view.name()
        + "  "
        + view.kind()
        + "  "
        + (newest == null
            ? "never calibrated"
            : "calibrated "
                + newest.on()
                + ", densities "
                + Claim.density(newest.clearest())
                + " to "
                + Claim.density(newest.densest()));
  }

  /** One with its residuals and drift. */
  static void details(InstrumentView view, PrintWriter out) {
    out.println(headline(view));
    CalibrationView newest = view.newest();
    if (newest != null) {
      out.println("step  tablet  seen in " + newest.channel() + "  residual");
      for (CalibrationView.StepView step : newest.steps()) {
        out.println(
            step.step()
                + "  "
                + Claim.density(step.density())
                + "  "
                + newest.seenWords(step)
                + "  "
                + (step.residual() == null
                    ? step.used() ? "end of the table" : "not used"
                    : Claim.difference(step.residual())));
      }
      DriftView drift = newest.drift();
      if (drift != null) {
        out.println(
            drift.largest() == null
                ? "not comparable with the calibration before"
                : "moved "
                    + Claim.density(drift.largest())
                    + " at most since the calibration before");
      }
    }
    out.println(view.claim());
  }
}
