package org.wetside.app.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Exchange;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.chemistry.MixingPlan;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.chemistry.Substance;
import org.wetside.core.quantity.Volume;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.Chemicals;

/** Weighs a formula out for a volume, with what is in the cupboard and on the balance at hand. */
public final class WeighOut {
  /** Water above this many °C scalds; common practice. */
  public static final double SCALDING_CELSIUS = 50;

  private final FormulaBook book;
  private final Supplier<AtHand> atHand;

  /**
   * @param book the formulas
   * @param atHand what to weigh and measure with when a question does not say
   */
  public WeighOut(FormulaBook book, Supplier<AtHand> atHand) {
    this.book = book;
    this.atHand = atHand;
  }

  /** What is weighed and measured with when a question does not say. */
  public AtHand atHand() {
    return atHand.get();
  }

  /**
   * What is asked.
   *
   * @param formula its name
   * @param make volume wanted; empty for the volume it is written for
   * @param have names of what stands in for ingredients
   * @param balance at hand; empty for the one of the house, or the usual one
   * @param measures at hand; empty for those of the house, or the usual ones
   */
  public record Question(
      String formula,
      Optional<Volume> make,
      List<String> have,
      Optional<Balance> balance,
      Optional<Measures> measures) {
    /** Keeps an unmodifiable copy. */
    public Question {
      have = List.copyOf(have);
    }

    /** Whether more is asked than to see the formula. */
    public boolean wantsMixing() {
      return make.isPresent() || !have.isEmpty() || balance.isPresent() || measures.isPresent();
    }
  }

  /**
   * A formula weighed out, or only shown.
   *
   * @param formula the formula
   * @param plan what to weigh; empty when it cannot be mixed and nobody asked to
   * @param balance it is weighed on
   * @param cautions for each step in order, none for water below 50 °C
   */
  public record Answer(
      Formula formula, Optional<MixingPlan> plan, Balance balance, List<List<Caution>> cautions) {
    /** Keeps an unmodifiable copy. */
    public Answer {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * The answer.
   *
   * @throws org.wetside.core.quantity.BadValueException when the formula or a substance is not
   *     known, it cannot be mixed so, or things would meet that must not
   */
  public Answer answer(Question question) {
    Formula formula = book.require(question.formula());
    Balance balance = question.balance().orElseGet(() -> atHand.get().balanceOrUsual());
    Cautions cautions = Cautions.open();
    if (formula.refusal().isPresent() && !question.wantsMixing()) {
      List<List<Caution>> shown = new ArrayList<>();
      for (FormulaStep step : formula.steps()) {
        shown.add(
            step.kind() == FormulaStep.Kind.INGREDIENT
                ? cautions.of(step.ingredient())
                : List.of());
      }
      return new Answer(formula, Optional.empty(), balance, shown);
    }
    Chemicals chemicals = book.chemicals();
    List<Substance> held = question.have().stream().map(chemicals.substances()::require).toList();
    Volume total = question.make().or(formula::basis).orElse(Volume.ZERO);
    MixingPlan plan =
        MixingPlan.of(
            formula,
            total,
            held,
            chemicals.exchanges(),
            balance,
            question.measures().orElseGet(() -> atHand.get().measuresOrUsual()));
    SafeOrder.require(plan.steps().stream().map(PlannedStep::name).toList());
    return new Answer(
        formula,
        Optional.of(plan),
        balance,
        plan.steps().stream().map(step -> of(step, cautions)).toList());
  }

  /**
   * What may stand in for a step of a formula, by name; nothing for water and what is not known.
   */
  public List<String> alternatives(FormulaStep step) {
    List<String> names = new ArrayList<>();
    if (step.substance().isPresent()) {
      for (Substance one : book.chemicals().substances().all()) {
        boolean other = !one.equals(step.substance().get());
        if (other
            && book.chemicals().exchanges().of(step.substance().get(), one)
                instanceof Exchange.Allowed) {
          names.add(one.name());
        }
      }
    }
    return names;
  }

  private static List<Caution> of(PlannedStep step, Cautions cautions) {
    if (step.step().kind() == FormulaStep.Kind.INGREDIENT) {
      return cautions.of(step.name());
    }
    boolean hot = step.water().filter(band -> band.high().celsius() > SCALDING_CELSIUS).isPresent();
    return hot ? List.of(cautions.ofHotWater()) : List.of();
  }
}
