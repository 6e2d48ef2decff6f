package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.TestRoll;
import org.wetside.web.paper.SheetWish;
import org.wetside.web.testroll.KeptTestRollView;
import org.wetside.web.testroll.KeptTestRollsView;
import org.wetside.web.testroll.TestRollSheet;
import org.wetside.web.testroll.TestRollText;
import org.wetside.web.testroll.TestRollView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code wetside testroll "TRI-X 400" --metered 1/60@f8 --middle 8min --sheet roll.pdf}. The answer
 * is the record that the same question gets over HTTP: a plan, a roll on file, or all of them.
 */
@Command(
    name = "testroll",
    description = {
      "Plan a roll that measures a film: what to expose, where to cut, how long. Or:",
      "  … --keep; --kept lists those on file; --kept NUMBER shows how far one has come"
    })
final class TestrollCommand extends HomeCommand<Record> {
  private static final String ALL = "/api/testrolls";

  @Mixin TestRollOptions said = new TestRollOptions();

  @Option(names = "--keep", description = "write the plan down, to be followed over weeks")
  boolean keep;

  @Option(
      names = "--kept",
      arity = "0..1",
      fallbackValue = "",
      paramLabel = "NUMBER",
      description = "those on file, or how far one of them has come")
  @Nullable String kept;

  @Option(names = "--sheet", paramLabel = "FILE", description = "write the sheet to print")
  @Nullable String sheet;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  @Override
  boolean writes() {
    return keep;
  }

  @Override
  Optional<Record> answerAnywhere() {
    check();
    return keep || kept != null ? Optional.empty() : Optional.of(TestRollView.of(planned(false)));
  }

  @Override
  Record answerHere(Wetside wetside) {
    KeepTestRolls rolls = wetside.sensitometry().keepTestRolls();
    if (keep) {
      return KeptTestRollView.of(rolls.begin(planned(true)));
    }
    if (number().isEmpty()) {
      return KeptTestRollsView.of(wetside);
    }
    return rolls
        .find(Long.parseLong(number()))
        .map(KeptTestRollView::of)
        .orElseThrow(
            () -> new BadValueException("test roll", number(), "there is none of that number"));
  }

  private TestRoll planned(boolean complete) {
    TestRollReader reader = new TestRollReader(Units.METRIC);
    return complete
        ? reader.requireComplete(said.query().draft())
        : reader.require(said.query().draft());
  }

  @Override
  ServerRequest request() {
    return keep
        ? ServerRequest.post(ALL, "application/json", JsonText.of(said.query()))
        : ServerRequest.get(number().isEmpty() ? ALL : ALL + "/" + number());
  }

  @Override
  Optional<Record> answerThere(ServerCall server) {
    return server.ask(request(), view()).map(Record.class::cast);
  }

  @Override
  @SuppressWarnings("unchecked") // each of the two is a record
  Class<Record> view() {
    Class<?> view = keep || !number().isEmpty() ? KeptTestRollView.class : KeptTestRollsView.class;
    return (Class<Record>) view;
  }

  private String number() {
    return kept == null ? "" : kept.strip();
  }

  /** Before anything is asked: a wish that cannot be meant leaves no roll behind. */
  private void check() {
    if (keep && kept != null) {
      throw new BadValueException("wish", "two at once", "choose one of --keep, --kept");
    }
    if (kept != null && said.areSaid()) {
      throw new BadValueException(
          "wish", "a plan beside --kept", "a plan stands alone, or goes with --keep");
    }
    if (!number().matches("\\d{0,15}")) {
      throw new BadValueException("test roll", number(), "its number, for example 1");
    }
    if (sheet != null && kept != null && number().isEmpty()) {
      throw new BadValueException("test roll", "", "say the number of the one to print");
    }
    var unusedPaper = new SheetWish(null, paper).format();
    var unusedFile = file();
  }

  private Optional<PaperFile> file() {
    return PaperFile.of("file of the sheet", sheet, force);
  }

  @Override
  void received(Record view) {
    TestRollView plan =
        view instanceof KeptTestRollView one
            ? one.plan()
            : view instanceof TestRollView one ? one : null;
    if (plan != null) {
      file().ifPresent(to -> to.write(TestRollSheet.pdf(plan, Units.METRIC, paper)));
    }
  }

  @Override
  void print(Record view, PrintWriter out) {
    if (view instanceof KeptTestRollsView all) {
      TestRollLines.print(all, out);
    } else if (view instanceof KeptTestRollView one) {
      TestRollLines.print(one, out);
    } else if (view instanceof TestRollView plan && sheet == null) {
      out.print(TestRollText.of(plan));
      out.flush();
    }
    if (sheet != null) {
      out.println(sheet + ": the sheet of a test roll");
    }
  }
}
