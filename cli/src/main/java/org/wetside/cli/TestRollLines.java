package org.wetside.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.wetside.app.times.TimeWords;
import org.wetside.web.testroll.KeptTestRollView;
import org.wetside.web.testroll.KeptTestRollsView;
import org.wetside.web.testroll.TestRollView;

/** Test rolls on file, as lines for a terminal. */
final class TestRollLines {
  private TestRollLines() {}

  /** One line for each, with what is next. */
  static void print(KeptTestRollsView view, PrintWriter out) {
    if (view.rolls().isEmpty()) {
      out.println("No test roll is kept.");
    }
    for (KeptTestRollView roll : view.rolls()) {
      out.println(roll.id() + "  " + title(roll) + "; " + next(roll));
    }
  }

  /** One with every step, its pieces and what is next. */
  static void print(KeptTestRollView roll, PrintWriter out) {
    out.println("Test roll " + roll.id() + ": " + title(roll));
    Map<String, KeptTestRollView.TickedStepView> done = new HashMap<>();
    roll.done().forEach(ticked -> done.put(ticked.step(), ticked));
    for (TestRollView.TestStepView step : roll.plan().steps()) {
      KeptTestRollView.TickedStepView ticked = done.get(step.step());
      out.println(
          ticked == null
              ? "  [ ] " + step.title()
              : "  [x] "
                  + step.title()
                  + ", "
                  + day(ticked.at())
                  + (ticked.note().isEmpty() ? "" : ": " + ticked.note()));
    }
    roll.pieces().forEach(piece -> print(piece, out));
    out.println(next(roll));
  }

  private static void print(KeptTestRollView.PieceStateView piece, PrintWriter out) {
    Double seconds = piece.developedSeconds();
    Double celsius = piece.temperatureC();
    if (seconds != null) {
      out.println(
          "  piece "
              + piece.piece()
              + ": developed "
              + TimeWords.clock(Duration.ofMillis(Math.round(seconds * 1000)))
              + (celsius == null ? "" : " at " + Metric.degrees(celsius))
              + " on "
              + piece.developedOn()
              + ", frames read: "
              + piece.readings().size()
              + (piece.curve() == null ? "" : ", curve " + piece.curve()));
    }
  }

  private static String title(KeptTestRollView roll) {
    TestRollView plan = roll.plan();
    return Objects.requireNonNullElse(plan.film(), "a film")
        + (plan.developer() == null ? "" : " in " + plan.developer())
        + ", begun "
        + day(roll.keptAt());
  }

  private static String next(KeptTestRollView roll) {
    for (TestRollView.TestStepView step : roll.plan().steps()) {
      if (step.step().equals(roll.next())) {
        return "next: " + step.title();
      }
    }
    return "all is done";
  }

  /** The day of the wall where the person is. */
  private static LocalDate day(String at) {
    return LocalDate.ofInstant(Instant.parse(at), HomeCommand.CLOCK.getZone());
  }
}
