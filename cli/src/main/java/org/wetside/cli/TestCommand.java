package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.web.trial.TestBody;
import org.wetside.web.trial.TestView;
import org.wetside.web.trial.TestsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside test F clearing --seconds 45 --film "TRI-X 400" --temp 20C}. */
@Command(
    name = "test",
    description = "Write down a test of a bottle or of washed film, and say what came of it.")
final class TestCommand extends HomeCommand<TestView> {
  @Parameters(index = "0", paramLabel = "BOTTLE", description = "its letter; film for washed film")
  @Nullable String subject;

  @Parameters(
      index = "1",
      paramLabel = "TEST",
      description = "clearing, leader, iodide or residue (of film)")
  @Nullable String kind;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "clearing time; it has cleared unless --seen says otherwise")
  @Nullable Double seconds;

  @Option(names = "--film", paramLabel = "NAME", description = "film of the clip")
  @Nullable String film;

  @Option(names = "--temp", paramLabel = "TEMP", description = "of the fixer, for example 20C")
  @Nullable String temp;

  @Option(
      names = "--dilution",
      paramLabel = "DILUTION",
      description = "how the fixer was made; as the label says when not said")
  @Nullable String dilution;

  @Option(names = "--fresh", description = "the solution is fresh: this time is the baseline")
  boolean fresh;

  @Option(
      names = "--rolls",
      paramLabel = "NUMBERS",
      description = "the rolls whose washing was tested")
  @Nullable String rolls;

  @Option(
      names = "--seen",
      paramLabel = "WHAT",
      description = "good, bad or unsure; good for a clearing time when not said")
  @Nullable String seen;

  @Option(names = "--note", paramLabel = "TEXT", description = "goes into the ledger")
  @Nullable String note;

  @Override
  boolean writes() {
    return true;
  }

  @Override
  TestView answerHere(Wetside wetside) {
    return TestView.of(body().to(wetside, subject()), Units.METRIC);
  }

  @Override
  ServerRequest request() {
    return ServerRequest.post(
        "/api/tests/" + ServerRequest.inPath(subject()), "application/json", JsonText.of(body()));
  }

  private String subject() {
    String said = subject == null ? "" : subject.strip();
    return said.equalsIgnoreCase(TestsView.FILM) ? TestsView.FILM : said.toUpperCase(Locale.ROOT);
  }

  private TestBody body() {
    return new TestBody(
        kind,
        film,
        dilution,
        Optional.ofNullable(temp).map(Temperature::parse).map(Temperature::celsius).orElse(null),
        fresh,
        rolls == null ? null : numbers(rolls),
        // a command writes down what was made; only the Bench starts a clock
        seen != null ? seen : seconds != null ? "good" : "",
        seconds,
        note);
  }

  private static List<String> numbers(String typed) {
    return Arrays.stream(typed.split("[,;\\s]+", -1)).filter(one -> !one.isEmpty()).toList();
  }

  @Override
  Class<TestView> view() {
    return TestView.class;
  }

  @Override
  void print(TestView view, PrintWriter out) {
    out.println(view.text());
    for (TestView.FixView fix : view.fixing()) {
      out.println(
          "Fix for "
              + fix.time()
              + ", "
              + fix.why()
              + " ("
              + fix.standing()
              + ", "
              + fix.source()
              + ")");
    }
    if (view.recall() != null) {
      out.println("Rolls fixed since the last good test are on the recall list: Shelf, Recall.");
    }
  }
}
