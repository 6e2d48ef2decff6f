package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.FixerPair;
import org.wetside.web.shelf.FixersBody;
import org.wetside.web.shelf.FixersView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside fixers}: two fixers used after each other. */
@Command(
    name = "fixers",
    description = "List pairs of fixers used one after the other, make one, turn one.")
final class FixersCommand extends HomeCommand<FixersView> {
  @Parameters(arity = "0..1", paramLabel = "FIRST", description = "letter of the first")
  @Nullable String first;

  @Option(
      names = "--second",
      paramLabel = "LETTER",
      description = "make a pair with this one second")
  @Nullable String second;

  @Option(names = "--spent", description = "the first is spent: discard it, move the second down")
  boolean spent;

  @Option(names = "--fresh", paramLabel = "LETTER", description = "the fresh one that comes second")
  @Nullable String fresh;

  @Option(
      names = "--jug",
      paramLabel = "JUG",
      description = "waste jug that the spent one goes into")
  @Nullable String jug;

  @Override
  boolean writes() {
    return second != null || spent || fresh != null || jug != null;
  }

  @Override
  FixersView answerHere(Wetside wetside) {
    if (writes()) {
      String letter = letter();
      if (second != null) {
        wetside.turnFixers().pair(letter, second);
      } else {
        FixerPair.Turn unused = body(letter).turn(wetside);
      }
    }
    return FixersView.of(wetside);
  }

  @Override
  ServerRequest request() {
    return writes()
        ? ServerRequest.post("/api/fixers", "application/json", JsonText.of(body(letter())))
        : ServerRequest.get("/api/fixers");
  }

  private FixersBody body(String letter) {
    return new FixersBody(letter, second, spent, fresh, jug);
  }

  private String letter() {
    if (jug != null && !spent) {
      throw new BadValueException("waste jug", jug, "say --spent with it");
    }
    if (fresh != null && !spent) {
      throw new BadValueException("fresh fixer", fresh, "say --spent with it");
    }
    if (spent && second != null) {
      throw new BadValueException("second fixer", second, "make a pair, or turn one; not both");
    }
    if (first == null) {
      throw new BadValueException("first fixer", "", "say the letter of its bottle");
    }
    return first;
  }

  @Override
  Class<FixersView> view() {
    return FixersView.class;
  }

  @Override
  void print(FixersView view, PrintWriter out) {
    if (view.pairs().isEmpty()) {
      out.println("No two fixers are used after each other.");
    }
    for (FixersView.PairView pair : view.pairs()) {
      out.println(
          pair.first() + " then " + pair.second() + ", turned " + pair.rotations() + " times");
      out.println("   " + pair.first() + ": " + pair.verdict().verdict());
      pair.verdict()
          .reasons()
          .forEach(one -> out.println("     " + one.words() + " (" + one.source() + ")"));
      out.println("   when " + pair.first() + " is spent: " + pair.next());
    }
  }
}
