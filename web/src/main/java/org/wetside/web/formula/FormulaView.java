package org.wetside.web.formula;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.quantity.Volume;
import org.wetside.reference.Bibliography;
import org.wetside.reference.Caution;
import org.wetside.web.mixing.CautionView;

/**
 * A formula weighed out, or only shown where it cannot be mixed.
 *
 * @param formula its short name
 * @param name what it is called
 * @param kind what it is for
 * @param offer mix, test kit or history
 * @param mixable whether it can be mixed
 * @param reason why not; null when it can
 * @param own whether the user wrote it
 * @param madeMl the volume the amounts are for; null when that is not known
 * @param balanceStepGrams the step of the balance they are weighed on
 * @param ingredients what is dissolved or poured in, in order
 * @param waters water to begin with and to make up, in the same order of steps
 * @param standing how the formula is known
 * @param source where it is printed
 * @param note limits and disagreements; may be empty
 * @param cautions what holds while anything is weighed, dissolved and poured; empty for a formula
 *     that is only shown
 */
public record FormulaView(
    String formula,
    String name,
    String kind,
    String offer,
    boolean mixable,
    @Nullable String reason,
    boolean own,
    @Nullable Double madeMl,
    double balanceStepGrams,
    List<IngredientView> ingredients,
    List<WaterView> waters,
    String standing,
    SourceView source,
    String note,
    List<CautionView> cautions) {
  /** The view of an answer. */
  public static FormulaView of(WeighOut.Answer answer) {
    Formula formula = answer.formula();
    Bibliography sources = Bibliography.open();
    List<IngredientView> ingredients = new ArrayList<>();
    List<WaterView> waters = new ArrayList<>();
    for (int i = 0; i < formula.steps().size(); i++) {
      List<Caution> cautions = answer.cautions().get(i);
      FormulaStep step = formula.steps().get(i);
      boolean water = step.kind() != FormulaStep.Kind.INGREDIENT;
      if (answer.plan().isEmpty()) {
        if (water) {
          waters.add(WaterView.shown(step));
        } else {
          ingredients.add(IngredientView.shown(step, cautions));
        }
        continue;
      }
      PlannedStep planned = answer.plan().get().steps().get(i);
      if (water) {
        waters.add(WaterView.of(planned, cautions));
      } else {
        ingredients.add(IngredientView.of(planned, cautions, sources));
      }
    }
    return new FormulaView(
        formula.code(),
        formula.name(),
        formula.kind(),
        formula.offer().word(),
        formula.refusal().isEmpty(),
        formula.refusal().orElse(null),
        formula.own(),
        answer
            .plan()
            .map(one -> one.total())
            .or(formula::basis)
            .map(Volume::millilitres)
            .orElse(null),
        answer.balance().step().grams(),
        ingredients,
        waters,
        formula.standing().word(),
        SourceView.of(formula.citation(), sources),
        formula.note(),
        formula.refusal().isEmpty() ? CautionView.ofMixing() : List.of());
  }
}
