package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.TimeRequest;
import org.wetside.web.times.OtherView;
import org.wetside.web.times.StepView;
import org.wetside.web.times.TimeView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside time "T-MAX 400" D-76 --dilution stock --ei 400 --temp 21.5C}. */
@Command(
    name = "time",
    description =
        "Find a development time, with the steps that led to it and how far it may be off.")
final class TimeCommand extends HomeCommand<TimeView> {
  @Parameters(index = "0", paramLabel = "FILM", description = "for example \"T-MAX 400\"")
  String film = "";

  @Parameters(index = "1", paramLabel = "DEVELOPER", description = "for example D-76")
  String developer = "";

  @Option(names = "--dilution", paramLabel = "DILUTION", description = "stock, 1+1 or a letter")
  String dilution = "";

  @Option(names = "--ei", paramLabel = "EI", description = "index the film was exposed at")
  String ei = "";

  @Option(
      names = "--temp",
      paramLabel = "TEMP",
      description = "of the bath, for example 20C or 68F")
  String temp = "";

  @Option(
      names = "--vessel",
      paramLabel = "TANK",
      description = "small (when not said), large, rotary or tray")
  String vessel = "";

  @Option(names = "--format", paramLabel = "FORMAT", description = "135, 120 or sheet")
  String format = "";

  @Option(
      names = "--agitation",
      paramLabel = "WAY",
      description = "ordinary, continuous, stand, semi-stand, two-bath or monobath")
  String agitation = "";

  @Option(names = "--aim", paramLabel = "CONTRAST", description = "contrast index wanted")
  String aim = "";

  @Option(
      names = "--beyond",
      description = "step outside 18 to 24 °C, as far as any published table goes")
  boolean beyond;

  @Override
  TimeView answerHere(Wetside wetside) {
    return TimeView.of(
        wetside
            .askTime()
            .readingAhead()
            .answer(
                new TimeRequest(
                    film, developer, dilution, ei, temp, vessel, format, agitation, aim, beyond)),
        wetside.learning().seeLearned()::now);
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/time")
        .with("film", film)
        .with("developer", developer)
        .with("dilution", said(dilution))
        .with("ei", said(ei))
        .with("temp", said(temp))
        .with("vessel", said(vessel))
        .with("format", said(format))
        .with("agitation", said(agitation))
        .with("aim", said(aim))
        .with("beyond", beyond ? "yes" : null);
  }

  private static @Nullable String said(String text) {
    return text.isEmpty() ? null : text;
  }

  @Override
  Class<TimeView> view() {
    return TimeView.class;
  }

  @Override
  void print(TimeView view, PrintWriter out) {
    out.println(view.time() + "  " + view.standing());
    out.println(
        view.film() + " (" + view.filmCode() + ") in " + view.developer() + " " + view.dilution());
    out.println("  nine in ten  " + span(view.bandSeconds().get(0), view.bandSeconds().get(1)));
    out.println(
        "  at your bench  " + span(view.benchBandSeconds().get(0), view.benchBandSeconds().get(1)));
    for (StepView step : view.basis()) {
      out.println(
          "  "
              + step.step()
              + ": "
              + step.text()
              + "  ["
              + step.standing()
              + ", "
              + step.source()
              + (step.locator().isEmpty() ? "" : ", " + step.locator())
              + "]");
    }
    if (view.yours() != null) {
      out.println("  " + view.yours());
    }
    if (view.yourIndex() != null) {
      out.println("  " + view.yourIndex());
    }
    for (String warning : view.warnings()) {
      out.println("  Note: " + warning);
    }
    for (OtherView other : view.others()) {
      out.println("  also " + other.time() + "  " + other.standing() + ", from " + other.text());
    }
  }

  private static String span(double low, double high) {
    return clock(low) + " to " + clock(high);
  }

  private static String clock(double seconds) {
    long whole = Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }
}
