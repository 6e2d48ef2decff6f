package org.wetside.web.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.Batch;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;

/**
 * Something that is mixed, or was.
 *
 * @param batch its number
 * @param formula short name of the formula
 * @param name what that is called
 * @param kind what it is for
 * @param madeMl volume made
 * @param balanceStepGrams step of the balance it is weighed on
 * @param standing of the formula
 * @param begunAt when mixing began
 * @param mixed whether every step is done
 * @param bottle letter of the bottle it went into; null when in none
 * @param steps in order of dissolving
 * @param cautions what holds while it is mixed; empty once every step is done
 */
public record BatchView(
    long batch,
    String formula,
    String name,
    String kind,
    double madeMl,
    double balanceStepGrams,
    String standing,
    String begunAt,
    boolean mixed,
    @Nullable String bottle,
    List<BatchStepView> steps,
    List<CautionView> cautions) {
  /** The view of a batch. */
  public static BatchView of(Batch batch) {
    Cautions cautions = Cautions.open();
    return new BatchView(
        batch.id(),
        batch.formula(),
        batch.name(),
        batch.kind(),
        batch.total().millilitres(),
        batch.balance().step().grams(),
        batch.standing().word(),
        batch.begunAt().toString(),
        batch.isMixed(),
        batch.bottle().orElse(null),
        batch.steps().stream().map(step -> BatchStepView.of(step, cautions)).toList(),
        batch.isMixed() ? List.of() : CautionView.ofMixing());
  }
}
