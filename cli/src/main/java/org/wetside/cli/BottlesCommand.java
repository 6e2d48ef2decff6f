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
import org.wetside.web.shelf.BottleBody;
import org.wetside.web.shelf.BottleChangeBody;
import org.wetside.web.shelf.BottlesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Option(
      names = "--passed",
      paramLabel = "TEST",
      description = "it passed a leader, clip or iodide test")
  @Nullable String passed;

  @Option(
      names = "--failed",
      paramLabel = "TEST",
      description = "it failed a leader, clip or iodide test")
  @Nullable String failed;

  @Option(names = "--discard", description = "it is off the shelf; its book is kept")
  boolean discard;

  @Option(names = "--note", paramLabel = "TEXT", description = "goes into its book")
  @Nullable String note;

  @Option(names = "--pour-back", paramLabel = "VOLUME", description = "poured back by hand")
  @Nullable String pourBack;

  @Option(
      names = "--out",
      paramLabel = "VOLUME",
      description = "used solution taken out before --top-up")
  @Nullable String out;

  @Option(
      names = "--before",
      paramLabel = "LINE",
      description = "earlier lines of its book: the number the list ends with")
  @Nullable Long before;

  @Mixin LabelOptions more = new LabelOptions();

  @Mixin ClipOptions clip = new ClipOptions();

  @Override
  boolean writes() {
    return add || discard || changes() > 0;
  }

  /** How many changes are asked for; to a new bottle --open is a fact about it. */
  private long changes() {
    return Stream.of(take, topUp, pourBack, correct, passed, failed, add ? null : open)
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
    BottlesView was = BottlesView.one(wetside, letter, Optional.ofNullable(before));
    if (discard) {
      wetside.changeBottle().discard(letter, note == null ? "" : note);
      return was;
    }
    if (changes() > 0) {
      change().to(wetside, letter);
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
            : ServerRequest.get(one).with("before", before);
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
          "choose one of --add, --open, --take, --top-up, --pour-back, --correct, --passed, --failed,"
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
        note,
        more.dilution,
        more.use,
        more.storage,
        more.batch,
        more.owner);
  }

  private BottleChangeBody change() {
    return new BottleChangeBody(
        millilitres(take).orElse(null),
        millilitres(topUp).orElse(null),
        millilitres(out).orElse(null),
        millilitres(pourBack).orElse(null),
        millilitres(correct).orElse(null),
        day(open),
        passed == null ? failed : passed,
        (passed == null && failed == null) ? null : passed != null,
        clip.seconds(),
        clip.film,
        more.dilution,
        clip.celsius(),
        clip.baseline,
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
  void print(BottlesView view, PrintWriter printed) {
    if (view.bottles().isEmpty()) {
      printed.println("No bottle stands on the shelf.");
    }
    BottlePrint text = new BottlePrint(printed);
    if (letter == null) {
      view.bottles().forEach(text::brief);
    } else {
      view.bottles().forEach(text::whole);
    }
  }
}
