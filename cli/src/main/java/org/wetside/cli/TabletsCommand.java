package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.density.KeepTablets;
import org.wetside.app.density.TabletLines;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.density.StepBody;
import org.wetside.web.density.TabletView;
import org.wetside.web.density.TabletsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside tablets}: step tablets with densities of their own. */
@Command(
    name = "tablets",
    description = "List the step tablets, write one down with its own densities, take it away.")
final class TabletsCommand extends HomeCommand<TabletsView> {
  private static final String ALL = "/api/tablets";

  @Parameters(arity = "0..1", paramLabel = "TABLET", description = "name of one")
  @Nullable String name;

  @Option(
      names = "--add",
      paramLabel = "FILE",
      description = "write it down: lines step,density from clear to dense; with --origin")
  @Nullable Path add;

  @Option(
      names = "--origin",
      paramLabel = "TEXT",
      description = "where its densities come from, for example its sheet")
  @Nullable String origin;

  @Option(names = "--remove", description = "take it away")
  boolean remove;

  @Override
  boolean writes() {
    return remove || add != null;
  }

  @Override
  TabletsView answerHere(Wetside wetside) {
    check();
    KeepTablets tablets = wetside.densitometry().keepTablets();
    if (add != null) {
      tablets.put(said(add));
    } else if (remove && !tablets.remove(String.valueOf(name))) {
      throw new BadValueException("tablet", String.valueOf(name), "there is none of that name");
    }
    return TabletsView.of(tablets);
  }

  private StepTablet said(Path file) {
    return new StepTablet(
        String.valueOf(name), origin == null ? "" : origin, TabletLines.parse(Picture.text(file)));
  }

  @Override
  ServerRequest request() {
    check();
    if (add != null) {
      return new ServerRequest(
          "PUT", ALL, "application/json", JsonText.of(TabletView.of(said(add))));
    }
    return remove
        ? new ServerRequest(
            "DELETE", ALL + "/" + ServerRequest.inPath(String.valueOf(name)), "", "")
        : ServerRequest.get(ALL);
  }

  private void check() {
    if (remove && add != null) {
      throw new BadValueException("wish", "two at once", "choose one of --add, --remove");
    }
    if (name == null && writes()) {
      throw new BadValueException("tablet", "", "say its name");
    }
  }

  @Override
  Class<TabletsView> view() {
    return TabletsView.class;
  }

  @Override
  void print(TabletsView view, PrintWriter out) {
    if (view.tablets().isEmpty()) {
      out.println("No step tablet is written down.");
    }
    for (TabletView one : view.tablets()) {
      List<StepBody> steps = one.steps();
      if (steps != null && (name == null || name.equalsIgnoreCase(one.name()))) {
        out.println(
            one.name()
                + "  "
                + steps.size()
                + " steps, "
                + steps.get(0).density()
                + " to "
                + steps.get(steps.size() - 1).density()
                + "  ("
                + one.origin()
                + ")");
        if (name != null) {
          steps.forEach(step -> out.println("    " + step.step() + "  " + step.density()));
        }
      }
    }
  }
}
