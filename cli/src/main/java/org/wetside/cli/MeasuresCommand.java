package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.formula.HowTo;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.web.equipment.BalanceBody;
import org.wetside.web.equipment.MeasuresView;
import org.wetside.web.equipment.OwnMeasureView;
import org.wetside.web.page.BalanceText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside measures}: the balance, and syringes and graduates, taken by every formula. */
@Command(
    name = "measures",
    description = "List the balance, syringes and graduates, write one down, take it away.")
final class MeasuresCommand extends HomeCommand<MeasuresView> {
  private static final String ALL = "/api/measures";

  @Parameters(arity = "0..1", paramLabel = "MEASURE", description = "name of one")
  @Nullable String name;

  @Option(names = "--holds", paramLabel = "VOLUME", description = "up to its last mark")
  @Nullable String holds;

  @Option(names = "--division", paramLabel = "VOLUME", description = "between two marks")
  @Nullable String division;

  @Option(names = "--remove", description = "take it away")
  boolean remove;

  @Option(
      names = "--balance",
      paramLabel = "STEP",
      description = "write down the smallest step the balance shows, for example 0.1g")
  @Nullable String balance;

  @Override
  boolean writes() {
    return remove || holds != null || balance != null;
  }

  @Override
  MeasuresView answerHere(Wetside wetside) {
    check();
    if (balance != null) {
      wetside.keepMeasures().put(BalanceText.parseWithUnit(balance));
    } else if (holds != null) {
      wetside.keepMeasures().put(said().measure());
    } else if (remove && !wetside.keepMeasures().remove(String.valueOf(name))) {
      throw new BadValueException("measure", String.valueOf(name), "there is none of that name");
    }
    return MeasuresView.of(wetside);
  }

  private OwnMeasureView said() {
    return new OwnMeasureView(name, millilitres(holds), millilitres(division));
  }

  private static @Nullable Double millilitres(@Nullable String text) {
    return text == null ? null : Volume.parse(text).millilitres();
  }

  @Override
  ServerRequest request() {
    check();
    if (balance != null) {
      BalanceBody body = new BalanceBody(BalanceText.parseWithUnit(balance).step().grams());
      return new ServerRequest("PUT", "/api/balance", "application/json", JsonText.of(body));
    }
    if (holds != null) {
      said().measure();
      return new ServerRequest("PUT", ALL, "application/json", JsonText.of(said()));
    }
    return remove
        ? new ServerRequest(
            "DELETE", ALL + "/" + ServerRequest.inPath(String.valueOf(name)), "", "")
        : ServerRequest.get(ALL);
  }

  private void check() {
    int wishes = (remove ? 1 : 0) + (holds == null ? 0 : 1) + (balance == null ? 0 : 1);
    if (wishes > 1) {
      throw new BadValueException(
          "wish", "several at once", "choose one of --holds, --remove, --balance");
    }
    if ((holds == null) != (division == null)) {
      throw new BadValueException(
          "measure", "half of it", "say what it --holds and its --division");
    }
    if (remove && name == null) {
      throw new BadValueException("measure", "", "say its name");
    }
    if (name != null && wishes == 0) {
      throw new BadValueException(
          "measure", name, "say what it --holds and its --division, or --remove");
    }
  }

  @Override
  Class<MeasuresView> view() {
    return MeasuresView.class;
  }

  @Override
  void print(MeasuresView view, PrintWriter out) {
    Double step = view.balanceStepGrams();
    out.println(
        step == null
            ? "No balance is written down: 0.1 g is taken."
            : "balance  shows " + HowTo.grams(step));
    if (view.measures().isEmpty()) {
      out.println("No measure is written down: those usual at home are taken.");
    }
    for (OwnMeasureView one : view.measures()) {
      Double capacity = one.holdsMl();
      Double marks = one.divisionMl();
      out.println(
          one.name()
              + (capacity == null ? "" : "  holds " + Metric.volume(capacity))
              + (marks == null ? "" : ", division " + Volume.ofMillilitres(marks)));
    }
  }
}
