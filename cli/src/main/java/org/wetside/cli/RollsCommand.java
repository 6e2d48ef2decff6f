package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.rolls.RollView;
import org.wetside.web.rolls.RollsView;
import org.wetside.web.rolls.RunStepView;
import org.wetside.web.rolls.RunView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside rolls}: the drawer and the negatives listed, found, shown, added to. */
@Command(
    name = "rolls",
    description = {
      "List the rolls, those that wait first, or:",
      "  --add '135 36 T-MAX 400 @800 \"harbour\"', --add-file FILE",
      "  --find WORDS, --state STATE, --show NUMBER"
    })
final class RollsCommand extends HomeCommand<RollsView> {
  @Option(names = "--add", paramLabel = "LINE", description = "put a roll into the drawer")
  @Nullable String line;

  @Option(
      names = "--add-file",
      paramLabel = "FILE",
      description = "put in every line of a file, all or none")
  @Nullable Path file;

  @Option(
      names = "--find",
      paramLabel = "WORDS",
      description = "film, title, day, developer, bottle, mishap; beginnings are enough")
  @Nullable String find;

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "waiting, loaded, processed, filed or withdrawn")
  @Nullable String state;

  @Option(
      names = "--show",
      paramLabel = "NUMBER",
      description = "one roll and everything that was done to it")
  @Nullable String show;

  @Override
  boolean writes() {
    return line != null || file != null;
  }

  @Override
  RollsView answerHere(Wetside wetside) {
    checkOne();
    if (writes()) {
      return RollsView.of(wetside, wetside.addRolls().lines(lines()).orRefuse());
    }
    return show == null ? RollsView.found(wetside, find, state) : RollsView.one(wetside, show);
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (writes()) {
      return ServerRequest.post("/api/rolls", "text/plain; charset=utf-8", lines());
    }
    return ServerRequest.get("/api/rolls")
        .with("number", show)
        .with("text", find)
        .with("state", state);
  }

  @Override
  Class<RollsView> view() {
    return RollsView.class;
  }

  private void checkOne() {
    int wishes = (line == null ? 0 : 1) + (file == null ? 0 : 1) + (show == null ? 0 : 1);
    boolean narrowed = find != null || state != null;
    if (wishes > 1 || (wishes == 1 && narrowed)) {
      throw new BadValueException(
          "wish",
          "several at once",
          "choose one of --add, --add-file, --show; --find and --state narrow the list");
    }
  }

  private String lines() {
    if (file == null) {
      return String.valueOf(line);
    }
    try {
      return Files.readString(file);
    } catch (CharacterCodingException notText) {
      throw new BadValueException("file", file.toString(), "it must be text in UTF-8");
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  void print(RollsView view, PrintWriter out) {
    if (view.rolls().isEmpty()) {
      out.println(
          find == null && state == null
              ? "No roll yet. wetside rolls --add '135 36 TRI-X 400 @400 \"harbour\"' puts one in."
              : "No roll is like that.");
    }
    for (RollView roll : view.rolls()) {
      print(roll, out);
      roll.tests()
          .forEach(
              test -> out.println("  " + test.title() + ": " + test.text() + " " + test.meaning()));
      for (RunView run : roll.runs()) {
        print(run, out);
      }
    }
  }

  private static void print(RollView roll, PrintWriter out) {
    out.println(
        roll.number()
            + "  "
            + roll.state()
            + "  "
            + roll.format()
            + (roll.frames() == null ? "" : " " + roll.frames())
            + "  "
            + roll.film()
            + (roll.kind().equals("b/w") ? "" : " " + roll.kind())
            + (roll.ei() == null ? "" : " @" + plain(roll.ei()))
            + (roll.title().isEmpty() ? "" : "  \"" + roll.title() + "\"")
            + (roll.exposedOn() == null ? "" : "  on " + roll.exposedOn())
            + (roll.owner().isEmpty() ? "" : "  of " + roll.owner())
            + (roll.precious() ? "  precious" : "")
            + (roll.sleeve().isEmpty() ? "" : "  in " + roll.sleeve()));
    if (!roll.mayBe().isEmpty()) {
      out.println("  which film? it may be " + String.join(", ", roll.mayBe()));
    }
    if (!roll.note().isEmpty()) {
      out.println("  note: " + roll.note());
    }
  }

  private static void print(RunView run, PrintWriter out) {
    out.println(
        "  run "
            + run.run()
            + ", "
            + run.phase()
            + (run.startedAt() == null ? "" : ", " + run.startedAt())
            + ": "
            + run.developer()
            + " "
            + run.dilution()
            + (run.temperatureC() == null ? "" : ", " + run.temperatureC() + " °C")
            + ", tank "
            + run.tank()
            + (run.sharedWith().isEmpty() ? "" : ", with " + String.join(", ", run.sharedWith())));
    out.println("    time: " + run.timeStanding() + ", " + run.timeSource());
    for (RunStepView step : run.steps()) {
      out.println(
          "    "
              + step.bath()
              + (step.bottle() == null ? "" : " " + step.bottle())
              + ": planned "
              + plain(step.plannedSeconds())
              + " s"
              + (step.actualSeconds() == null
                  ? ", not reached"
                  : ", took " + plain(step.actualSeconds()) + " s, " + step.wentTo()));
    }
    for (RunView.ReadingView reading : run.readings()) {
      out.println("    " + reading.at() + ": " + reading.correctedC() + " °C, " + reading.bath());
    }
    run.mishaps().forEach(mishap -> out.println("    mishap: " + mishap));
    run.notes().forEach(note -> out.println("    note: " + note));
    run.gaps().forEach(gap -> out.println("    nobody there " + gap.from() + " to " + gap.to()));
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
