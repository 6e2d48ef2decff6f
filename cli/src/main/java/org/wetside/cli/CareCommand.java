package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.CareForBath;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.web.shelf.CareView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside care}: replenishing a bath, and times for one that is used again. */
@Command(
    name = "care",
    description = "How a bath is replenished in small parts, and times by roll number.")
final class CareCommand extends HomeCommand<CareView> {
  @Parameters(paramLabel = "LETTER", description = "the bottle")
  String letter = "";

  @Option(
      names = "--rolls",
      paramLabel = "N",
      description = "film since it was replenished; what its book says when not said")
  @Nullable Double rolls;

  @Option(
      names = "--per-roll",
      paramLabel = "VOLUME",
      description = "the leaflet's rate; the one on file when not said")
  @Nullable String perRoll;

  @Override
  CareView answerHere(Wetside wetside) {
    CareForBath care = wetside.careForBath();
    UnitOfUse film = rolls == null ? care.usualFilm(letter) : UnitOfUse.ofRolls(rolls);
    return CareView.of(care.of(letter, film, rate()));
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/bottles/" + ServerRequest.inPath(letter) + "/care")
        .with("rolls", rolls)
        .with("perRollMl", rate().map(Volume::millilitres).orElse(null));
  }

  private Optional<Volume> rate() {
    return Optional.ofNullable(perRoll).map(Volume::parse);
  }

  @Override
  Class<CareView> view() {
    return CareView.class;
  }

  @Override
  void print(CareView view, PrintWriter out) {
    if (view.replenisherMl() == null) {
      out.println("No rate of replenishing is on file: read it in the leaflet, say --per-roll.");
    } else {
      out.println(
          "Replenisher: "
              + Metric.volume(view.replenisherMl())
              + " ["
              + view.replenisherStanding()
              + ", "
              + view.replenisherSource()
              + "], never more than "
              + Metric.volume(view.mostAtOnceMl())
              + " at once ["
              + view.mostAtOnceSource()
              + "]");
    }
    for (CareView.PartView part : view.parts()) {
      out.println(
          "   take out "
              + Metric.volume(part.outMl())
              + ", add "
              + Metric.volume(part.addMl())
              + ", return "
              + Metric.volume(part.backMl())
              + " to the mark, stir");
    }
    for (CareView.TableView table : view.tables()) {
      out.println(
          table.film()
              + " "
              + table.format()
              + ": roll "
              + table.nextRoll()
              + " of "
              + Metric.volume(table.volumeMl())
              + (table.nextSeconds() == null
                  ? " has no time: the table ends with roll "
                      + table.lastRoll()
                      + ", the bath is spent"
                  : " takes " + table.nextSeconds() + " s")
              + " ["
              + table.source()
              + "]");
    }
  }
}
