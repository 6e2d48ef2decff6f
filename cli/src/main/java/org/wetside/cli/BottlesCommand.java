package org.wetside.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.shelf.BottleBody;
import org.wetside.web.shelf.BottleChangeBody;
import org.wetside.web.shelf.BottleView;
import org.wetside.web.shelf.BottlesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside bottles}: what stands on the shelf, and what is done to it. */
@Command(
    name = "bottles",
    description = "List the bottles, show one with its book, and write down what is done to it.")
final class BottlesCommand extends HomeCommand<BottlesView> {
  private static final String ALL = "/api/bottles";

  @Parameters(arity = "0..1", paramLabel = "LETTER", description = "one bottle")
  @Nullable String letter;

  @Option(names = "--add", description = "put it on the shelf, with what follows")
  boolean add;

  @Option(names = "--contents", paramLabel = "NAME", description = "for example D-76")
  @Nullable String contents;

  @Option(
      names = "--bath",
      paramLabel = "BATH",
      description = "developer, stop bath, fixer, wash aid, final rinse …")
  @Nullable String bath;

  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "concentrate, stock, working, replenisher or waste")
  @Nullable String role;

  @Option(names = "--holds", paramLabel = "VOLUME", description = "when full, for example 1L")
  @Nullable String holds;

  @Option(names = "--left", paramLabel = "VOLUME", description = "in it now; full when not said")
  @Nullable String left;

  @Option(names = "--one-shot", description = "what is taken out is thrown away after use")
  boolean oneShot;

  @Option(names = "--mixed", paramLabel = "DAY", description = "when, for example 2026-01-10")
  @Nullable String mixed;

  @Option(
      names = "--open",
      paramLabel = "DAY",
      arity = "0..1",
      fallbackValue = "today",
      description = "it was opened; today when no day is said")
  @Nullable String open;

  @Option(names = "--take", paramLabel = "VOLUME", description = "taken out by hand")
  @Nullable String take;

  @Option(names = "--top-up", paramLabel = "VOLUME", description = "added to it")
  @Nullable String topUp;

  @Option(
      names = "--correct",
      paramLabel = "VOLUME",
      description = "really in it, after looking; --note says why")
  @Nullable String correct;

  @Option(names = "--passed", paramLabel = "TEST", description = "it passed a leader or clip test")
  @Nullable String passed;

  @Option(names = "--failed", paramLabel = "TEST", description = "it failed a leader or clip test")
  @Nullable String failed;

  @Option(names = "--discard", description = "it is off the shelf; its book is kept")
  boolean discard;

  @Option(names = "--note", paramLabel = "TEXT", description = "goes into its book")
  @Nullable String note;

  @Override
  boolean writes() {
    return add || discard || changes() > 0;
  }

  /** How many changes are asked for; to a new bottle --open is a fact about it. */
  private long changes() {
    return Stream.of(take, topUp, correct, passed, failed, add ? null : open)
        .filter(Objects::nonNull)
        .count();
  }

  @Override
  BottlesView answerHere(Wetside wetside) {
    checkOne();
    if (letter == null) {
      return BottlesView.of(wetside);
    }
    if (add) {
      BottleBody body = body();
      BottleLabel label = body.label();
      wetside.addBottle().add(label, body.filled());
      return BottlesView.one(wetside, label.letter());
    }
    BottlesView was = BottlesView.one(wetside, letter);
    if (discard) {
      wetside.changeBottle().discard(letter, note == null ? "" : note);
      return was;
    }
    if (changes() > 0) {
      change().to(wetside.changeBottle(), letter);
      return BottlesView.one(wetside, letter);
    }
    return was;
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (letter == null) {
      return ServerRequest.get(ALL);
    }
    if (add) {
      return ServerRequest.post(ALL, "application/json", JsonText.of(body())).with("as", "list");
    }
    String one = ALL + "/" + ServerRequest.inPath(letter);
    if (discard) {
      return new ServerRequest("DELETE", one, "", "").with("as", "list").with("note", note);
    }
    ServerRequest request =
        changes() > 0
            ? ServerRequest.post(one + "/book", "application/json", JsonText.of(change()))
            : ServerRequest.get(one);
    return request.with("as", "list");
  }

  private void checkOne() {
    if (letter == null && writes()) {
      throw new BadValueException("bottle", "", "say its letter, for example D");
    }
    if (changes() + (add ? 1 : 0) + (discard ? 1 : 0) > 1) {
      throw new BadValueException(
          "change of a bottle",
          "several at once",
          "choose one of --add, --open, --take, --top-up, --correct, --passed, --failed,"
              + " --discard");
    }
  }

  private BottleBody body() {
    return new BottleBody(
        letter,
        contents,
        role,
        bath,
        millilitres(holds).orElse(null),
        millilitres(left).orElse(null),
        oneShot,
        mixed,
        day(open),
        note);
  }

  private BottleChangeBody change() {
    return new BottleChangeBody(
        millilitres(take).orElse(null),
        millilitres(topUp).orElse(null),
        millilitres(correct).orElse(null),
        day(open),
        passed == null ? failed : passed,
        (passed == null && failed == null) ? null : passed != null,
        note);
  }

  private static @Nullable String day(@Nullable String typed) {
    return "today".equals(typed) ? LocalDate.now(HomeCommand.CLOCK).toString() : typed;
  }

  private static Optional<Double> millilitres(@Nullable String typed) {
    return Optional.ofNullable(typed).map(Volume::parse).map(Volume::millilitres);
  }

  @Override
  Class<BottlesView> view() {
    return BottlesView.class;
  }

  @Override
  void print(BottlesView view, PrintWriter out) {
    if (view.bottles().isEmpty()) {
      out.println("No bottle stands on the shelf.");
    }
    for (BottleView bottle : view.bottles()) {
      out.println(
          bottle.letter()
              + "  "
              + bottle.contents()
              + ", "
              + bottle.role()
              + "  "
              + Metric.volume(bottle.leftMl())
              + " of "
              + Metric.volume(bottle.fullMl())
              + (bottle.mixedOn() == null ? "" : "  mixed " + bottle.mixedOn())
              + (bottle.openedOn() == null ? "" : "  opened " + bottle.openedOn()));
      for (BottleView.LineView line : bottle.book()) {
        out.println(
            "   "
                + line.at()
                + "  "
                + line.what()
                + String.format("  %+.0f mL", line.changeMl())
                + (line.note().isEmpty() ? "" : "  " + line.note()));
      }
      if (letter != null) {
        for (CautionView caution : bottle.cautions()) {
          out.println("Caution: " + caution.text());
        }
      }
    }
  }
}
