package org.wetside.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.formula.AtHand;
import org.wetside.app.formula.FormulaBook;
import org.wetside.app.formula.HowTo;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.web.formula.FormulaQuery;
import org.wetside.web.formula.FormulaView;
import org.wetside.web.formula.IngredientView;
import org.wetside.web.formula.MixingCard;
import org.wetside.web.formula.SubstitutionView;
import org.wetside.web.formula.WaterView;
import org.wetside.web.mixing.CautionView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside formula D-76 --make 700mL --have "sodium sulfite heptahydrate"}. */
@Command(name = "formula", description = "Weigh a formula out for a volume, or show it.")
final class FormulaCommand extends HomeCommand<FormulaView> {
  @Parameters(paramLabel = "FORMULA", description = "its name, for example D-76")
  String formula = "";

  @Option(names = "--make", paramLabel = "VOLUME", description = "wanted, for example 700mL")
  @Nullable String make;

  @Option(
      names = "--have",
      paramLabel = "SUBSTANCE",
      description = "in the cupboard in place of an ingredient; once for each")
  List<String> have = new ArrayList<>();

  @Option(
      names = "--balance",
      paramLabel = "STEP",
      description = "its smallest step; when not said the one under Equipment, else 0.1g")
  @Nullable String balance;

  @Option(
      names = "--measure",
      paramLabel = "MEASURE",
      description = "syringe or graduate at hand, capacity and division: 100mL/1mL; once for each")
  List<String> measures = new ArrayList<>();

  @Option(names = "--pdf", paramLabel = "FILE", description = "write a mixing card to print")
  @Nullable String pdf;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  /** What is on file needs no home when balance and measures are said. */
  @Override
  Optional<FormulaView> answerAnywhere() {
    if (balance == null || measures.isEmpty()) {
      return Optional.empty();
    }
    FormulaBook book = FormulaBook.onFileOnly();
    return book.find(formula).isPresent()
        ? Optional.of(answer(new WeighOut(book, () -> AtHand.USUAL)))
        : Optional.empty();
  }

  @Override
  FormulaView answerHere(Wetside wetside) {
    return answer(wetside.weighOut());
  }

  private FormulaView answer(WeighOut weighOut) {
    return FormulaView.of(weighOut.answer(query().question(formula)));
  }

  private FormulaQuery query() {
    return new FormulaQuery(make, String.join(";", have), balance, String.join(";", measures));
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/formulas/" + ServerRequest.inPath(formula))
        .with("make", make)
        .with("have", have.isEmpty() ? null : String.join(";", have))
        .with("balance", balance)
        .with("measures", measures.isEmpty() ? null : String.join(";", measures));
  }

  @Override
  Class<FormulaView> view() {
    return FormulaView.class;
  }

  @Override
  void received(FormulaView view) {
    if (pdf != null && !view.mixable()) {
      throw new BadValueException("formula to mix", view.formula(), String.valueOf(view.reason()));
    }
    PaperFile.of("file of the card", pdf, force)
        .ifPresent(file -> file.write(MixingCard.pdf(view, Units.METRIC, paper)));
  }

  @Override
  void print(FormulaView view, PrintWriter out) {
    if (pdf != null) {
      out.println(pdf + ": the mixing card of " + view.formula());
      return;
    }
    Double made = view.madeMl();
    out.println(
        view.formula()
            + ", "
            + view.name()
            + ", "
            + view.kind()
            + (made == null ? "" : ": " + Metric.volume(made)));
    out.println("  " + view.standing() + ", " + view.source().id() + " " + view.source().title());
    if (view.reason() != null) {
      out.println("  Not to be mixed here: " + view.reason() + ".");
    }
    int last = view.ingredients().size() + view.waters().size();
    cautions(view.cautions(), out);
    for (int step = 1; step <= last; step++) {
      int now = step;
      view.waters().stream().filter(one -> one.step() == now).forEach(one -> water(one, out));
      view.ingredients().stream()
          .filter(one -> one.step() == now)
          .forEach(one -> ingredient(one, out));
    }
    if (!view.note().isEmpty()) {
      out.println("Note: " + view.note());
    }
  }

  private static void water(WaterView water, PrintWriter out) {
    Double volume = water.volumeMl();
    Double low = water.lowC();
    Double high = water.highC();
    out.println(
        water.step()
            + ". "
            + water.text()
            + (volume == null ? "" : (water.toMake() ? " " : ": ") + Metric.volume(volume))
            + (low == null || high == null
                ? ""
                : ", at "
                    + Metric.degrees(low)
                    + (low.equals(high) ? "" : " to " + Metric.degrees(high))));
    cautions(water.cautions(), out);
  }

  private static void ingredient(IngredientView one, PrintWriter out) {
    Double grams = one.grams();
    Double volume = one.volumeMl();
    String amount =
        grams != null ? HowTo.grams(grams) : volume != null ? Metric.volume(volume) : "?";
    out.println(one.step() + ". " + one.name() + ": " + amount);
    if (!one.how().isEmpty()) {
      out.println("     " + one.how() + ".");
    }
    if (one.substitution() != null) {
      substitution(one.substitution(), out);
    }
    if (!one.dissolving().isEmpty()) {
      out.println(
          "     "
              + one.dissolving()
              + " ("
              + one.dissolvingStanding()
              + ", "
              + one.dissolvingSource()
              + ").");
    }
    if (!one.note().isEmpty()) {
      out.println("     " + one.note() + ".");
    }
    cautions(one.cautions(), out);
  }

  private static void substitution(SubstitutionView one, PrintWriter out) {
    out.println(
        "     in place of "
            + one.specified()
            + String.format(Locale.ROOT, ": × %.4f", one.factor())
            + ", computed, "
            + one.source().id());
    if (one.printed() != null && one.printedSource() != null) {
      out.println(
          "     printed: "
              + one.printed()
              + ", "
              + one.printedSource().id()
              + (one.printedReversed() ? "; PRINTED THE WRONG WAY ROUND, not used" : ""));
    }
  }

  private static void cautions(List<CautionView> cautions, PrintWriter out) {
    for (CautionView caution : cautions) {
      out.println("     Caution: " + caution.text());
    }
  }
}
