package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.Offer;
import org.wetside.core.chemistry.StepWords;
import org.wetside.core.chemistry.Substances;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;

/** The formulas on file. */
public final class Formulas {
  private final List<Formula> all;

  private Formulas(List<Formula> all) {
    this.all = List.copyOf(all);
  }

  /**
   * Reads the files.
   *
   * @param substances by which ingredients are understood
   */
  public static Formulas open(Substances substances) {
    ReferenceTable steps = ReferenceTable.open("baths/formula_steps");
    List<Formula> all = new ArrayList<>();
    for (ReferenceRow row : ReferenceTable.open("baths/formulas").rows()) {
      all.add(formula(row, steps, substances));
    }
    return new Formulas(all);
  }

  /** All of them, in the order of the file. */
  public List<Formula> all() {
    return all;
  }

  /** The one of that code or name, however it is spelled: {@code d76} is {@code D-76}. */
  public Optional<Formula> find(String name) {
    String wanted = plain(name);
    return all.stream()
        .filter(one -> plain(one.code()).equals(wanted) || plain(one.name()).equals(wanted))
        .findFirst();
  }

  /** A name without what people write differently. */
  public static String plain(String name) {
    StringBuilder plain = new StringBuilder();
    String lower = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < lower.length(); i++) {
      if (Character.isLetterOrDigit(lower.charAt(i))) {
        plain.append(lower.charAt(i));
      }
    }
    return plain.toString();
  }

  private static Formula formula(ReferenceRow row, ReferenceTable table, Substances substances) {
    List<FormulaStep> steps = new ArrayList<>();
    boolean perLitre = false;
    for (ReferenceRow step : table.rows()) {
      if (step.text("formula").equals(row.text("formula"))) {
        steps.add(step(step, substances));
        perLitre |= step.text("unit").endsWith("/L");
      }
    }
    return new Formula(
        row.text("formula"),
        row.text("name"),
        row.text("kind"),
        Offer.fromWord(row.text("offer")),
        row.text("reason"),
        Formula.basisOf(steps, perLitre),
        steps,
        false,
        row.note(),
        row.citation(),
        row.standing());
  }

  private static FormulaStep step(ReferenceRow row, Substances substances) {
    String ingredient = row.text("ingredient");
    OptionalDouble amount = row.maybeNumber("amount");
    Optional<Mass> mass = Optional.empty();
    Optional<Volume> volume = Optional.empty();
    if (amount.isPresent()) {
      double number = amount.getAsDouble();
      switch (row.text("unit")) {
        case "g", "g/L" -> mass = Optional.of(Mass.ofGrams(number));
        case "mL", "mL/L" -> volume = Optional.of(Volume.ofMillilitres(number));
        case "fl oz" -> volume = Optional.of(Volume.ofUsFluidOunces(number));
        default -> throw new IllegalStateException("formula_steps.csv: no such unit: " + row);
      }
    }
    FormulaStep.Kind kind = StepWords.kind(ingredient);
    return new FormulaStep(
        (int) row.number("step"),
        ingredient,
        kind,
        mass,
        volume,
        StepWords.warmth(ingredient),
        kind == FormulaStep.Kind.INGREDIENT ? substances.meant(ingredient) : Optional.empty(),
        row.note(),
        row.citation(),
        row.standing());
  }
}
