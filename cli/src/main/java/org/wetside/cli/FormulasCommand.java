package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.formula.FormulaBody;
import org.wetside.web.formula.FormulasView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside formulas}: what can be mixed, and your own. */
@Command(
    name = "formulas",
    description = "List the formulas, keep one of your own, or take one away.")
final class FormulasCommand extends HomeCommand<FormulasView> {
  private static final String ALL = "/api/formulas";

  @Option(names = "--add", paramLabel = "NAME", description = "keep one of your own, with --lines")
  @Nullable String add;

  @Option(
      names = "--lines",
      paramLabel = "FILE",
      description = "a text file, one line each: 750 mL water 52 C; 2 g metol; 1 L water to make")
  @Nullable String lines;

  @Option(names = "--kind", paramLabel = "KIND", description = "what it is for, such as fixer")
  @Nullable String kind;

  @Option(names = "--source", paramLabel = "WORDS", description = "where it is printed")
  @Nullable String source;

  @Option(names = "--remove", paramLabel = "NAME", description = "take one of your own away")
  @Nullable String remove;

  @Override
  boolean writes() {
    return add != null || remove != null;
  }

  @Override
  FormulasView answerHere(Wetside wetside) {
    checkOne();
    if (add != null) {
      return FormulasView.of(List.of(wetside.keepFormula().keep(body().toOwn())));
    }
    if (remove != null) {
      return FormulasView.of(List.of(wetside.keepFormula().remove(remove)));
    }
    return FormulasView.of(wetside.formulaBook().all());
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (add != null) {
      return ServerRequest.post(ALL, "application/json", JsonText.of(body())).with("as", "list");
    }
    if (remove != null) {
      return new ServerRequest("DELETE", ALL + "/" + ServerRequest.inPath(remove), "", "")
          .with("as", "list");
    }
    return ServerRequest.get(ALL);
  }

  private void checkOne() {
    if (add != null && remove != null) {
      throw new BadValueException(
          "change of the formulas", "several at once", "choose --add or --remove");
    }
    if ((add == null) != (lines == null)) {
      throw new BadValueException(
          "formula of your own", "half of it", "--add says its name, --lines the file with it");
    }
  }

  private FormulaBody body() {
    return new FormulaBody(add, null, kind, source, null, text(String.valueOf(lines)));
  }

  private static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException unreadable) {
      throw new BadValueException("file of the formula", file, "it cannot be read as UTF-8 text");
    }
  }

  @Override
  Class<FormulasView> view() {
    return FormulasView.class;
  }

  @Override
  void print(FormulasView view, PrintWriter out) {
    for (FormulasView.FormulaLineView one : view.formulas()) {
      out.println(
          one.formula()
              + "  "
              + one.name()
              + ", "
              + one.kind()
              + "  "
              + (one.own() ? "your own, " : "")
              + one.standing()
              + (one.reason() == null ? "" : "  not to be mixed here: " + one.reason()));
    }
  }
}
