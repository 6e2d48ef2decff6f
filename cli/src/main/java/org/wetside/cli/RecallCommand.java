package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.shelf.RecallView;
import org.wetside.web.shelf.RefixBody;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside recall}: which rolls are to be fixed again. */
@Command(
    name = "recall",
    description = "List the rolls that are to be fixed again, and note that one was.")
final class RecallCommand extends HomeCommand<RecallView> {
  @Parameters(arity = "0..1", paramLabel = "ROLL", description = "one roll")
  @Nullable String roll;

  @Option(names = "--refixed", description = "it was fixed again")
  boolean refixed;

  @Option(names = "--in", paramLabel = "LETTER", description = "in this bottle, which counts it")
  @Nullable String in;

  @Option(names = "--owner", paramLabel = "NAME", description = "whose it is")
  @Nullable String owner;

  @Option(names = "--note", paramLabel = "TEXT", description = "goes into the book")
  @Nullable String note;

  @Override
  boolean writes() {
    return refixed || owner != null || in != null;
  }

  @Override
  RecallView answerHere(Wetside wetside) {
    if (writes()) {
      String number = number();
      if (owner != null) {
        wetside.readRecall().setOwner(number, owner);
      }
      if (refixed) {
        wetside.readRecall().refixed(number, Optional.ofNullable(in), note == null ? "" : note);
      }
    }
    return RecallView.of(wetside.readRecall().all());
  }

  @Override
  ServerRequest request() {
    return writes()
        ? ServerRequest.post(
            "/api/recall/" + ServerRequest.inPath(number()),
            "application/json",
            JsonText.of(new RefixBody(refixed, in, note, owner)))
        : ServerRequest.get("/api/recall");
  }

  private String number() {
    if (in != null && !refixed) {
      throw new BadValueException("fixed again in", in, "say --refixed with it");
    }
    if (roll == null) {
      throw new BadValueException("roll", "", "say its number, for example 26-001");
    }
    return roll;
  }

  @Override
  Class<RecallView> view() {
    return RecallView.class;
  }

  @Override
  void print(RecallView view, PrintWriter out) {
    if (view.rolls().isEmpty()) {
      out.println("No roll is to be fixed again.");
    }
    for (RecallView.RollView one : view.rolls()) {
      out.println(
          (one.roll().isEmpty() ? "(not named)" : one.roll())
              + "  "
              + one.film()
              + (one.sleeve().isEmpty() ? "" : "  sleeve " + one.sleeve())
              + (one.owner().isEmpty() ? "" : "  of " + one.owner())
              + "  fixed in "
              + one.bottle()
              + ", "
              + one.contents()
              + ", "
              + one.fixedAt());
    }
  }
}
