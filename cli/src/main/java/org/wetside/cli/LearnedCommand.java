package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.learning.FactorBody;
import org.wetside.web.learning.LearnedView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside learned}: factors learned from judged rolls, and the control chart. */
@Command(
    name = "learned",
    description = {
      "Show what judged rolls say of each film in each developer, or:",
      "  --accept FILM DEVELOPER, --undo FILM DEVELOPER, of the factor; with --index, of the index"
    })
final class LearnedCommand extends HomeCommand<LearnedView> {
  private static final String FACTOR = "/api/learned/in-use";
  private static final String INDEX = "/api/learned/index-in-use";

  @Option(names = "--accept", description = "use the factor of that film in that developer")
  boolean accept;

  @Option(names = "--undo", description = "use the printed time of that film in that developer")
  boolean undo;

  @Option(
      names = "--index",
      description = "with --accept and --undo: the index you expose at, not the factor")
  boolean index;

  @Parameters(
      paramLabel = "FILM DEVELOPER",
      description = "with --accept and --undo",
      arity = "0..2")
  List<String> names = List.of();

  @Override
  boolean writes() {
    return accept || undo;
  }

  @Override
  LearnedView answerHere(Wetside wetside) {
    checkOne();
    if (accept && index) {
      var unused = wetside.learning().acceptIndex().accept(names.get(0), names.get(1));
    } else if (accept) {
      var unused = wetside.learning().acceptFactor().accept(names.get(0), names.get(1));
    } else if (undo && index) {
      wetside.learning().acceptIndex().takeBack(names.get(0), names.get(1));
    } else if (undo) {
      wetside.learning().acceptFactor().takeBack(names.get(0), names.get(1));
    }
    return LearnedView.of(wetside.learning().seeLearned().now());
  }

  @Override
  ServerRequest request() {
    checkOne();
    String inUse = index ? INDEX : FACTOR;
    if (accept) {
      return ServerRequest.post(
          inUse, "application/json", JsonText.of(new FactorBody(names.get(0), names.get(1))));
    }
    return undo
        ? new ServerRequest("DELETE", inUse, "", "")
            .with("film", names.get(0))
            .with("developer", names.get(1))
        : ServerRequest.get("/api/learned");
  }

  private void checkOne() {
    if (accept && undo) {
      throw new BadValueException("wish", "two at once", "choose one of --accept, --undo");
    }
    if (index && !writes()) {
      throw new BadValueException("wish", "--index alone", "it goes with --accept or --undo");
    }
    if (writes() != (names.size() == 2)) {
      throw new BadValueException(
          "film in developer",
          String.join(" ", names),
          "write film and developer with --accept or --undo, for example \"TRI-X 400\" D-76");
    }
  }

  @Override
  Class<LearnedView> view() {
    return LearnedView.class;
  }

  @Override
  void print(LearnedView view, PrintWriter out) {
    if (view.lessons().isEmpty()) {
      out.println("Nothing is learned yet. wetside judge ROLL judges the negatives of a roll.");
    }
    for (LearnedView.LessonView lesson : view.lessons()) {
      out.println(lesson.film() + " (" + lesson.filmCode() + ") in " + lesson.developer());
      out.println(
          "  "
              + (lesson.words() == null ? "no factor told yet" : lesson.words())
              + judged(lesson.byWords()));
      if (lesson.indexWords() != null) {
        out.println("  " + lesson.indexWords() + judged(lesson.indexByWords()));
      }
    }
    for (LearnedView.ChartPointView point : view.chart()) {
      out.println(
          String.format(
              Locale.ROOT,
              "  %s  %+.0f %%, expected %+.0f %%, off by %+.1f%s%s",
              point.roll(),
              100 * (point.factor() - 1),
              100 * (point.expectedFactor() - 1),
              point.sigmas(),
              point.drift().isEmpty() ? "" : ": " + point.drift(),
              point.changed().isEmpty()
                  ? ""
                  : "  (changed: " + String.join(", ", point.changed()) + ")"));
    }
  }

  private static String judged(boolean byWords) {
    return byWords ? " (by words; what they are worth is a judgement, not read anywhere)" : "";
  }
}
