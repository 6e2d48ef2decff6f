package org.wetside.core.chemistry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/** What is at hand, matched with the ingredients it stands in for. */
final class Cupboard {
  /** By the place of the step. */
  private final Map<Integer, Exchange.Allowed> exchanges = new HashMap<>();

  /**
   * @throws BadValueException naming what stands in for nothing, or must not
   */
  Cupboard(Formula formula, List<Substance> held, Exchanges known) {
    List<FormulaStep> taken = new ArrayList<>();
    for (Substance one : held) {
      boolean used = false;
      String refused = "";
      for (FormulaStep step : formula.steps()) {
        if (step.substance().isEmpty()) {
          continue;
        }
        Substance specified = step.substance().get();
        Exchange exchange =
            specified.equals(one) ? new Exchange.Unknown() : known.of(specified, one);
        boolean fits = specified.equals(one) || exchange instanceof Exchange.Allowed;
        if (fits && taken.contains(step)) {
          throw new BadValueException(
              "substance at hand",
              one.name(),
              step.ingredient() + " is answered for already; name one for each ingredient");
        }
        if (fits) {
          taken.add(step);
          used = true;
        }
        if (exchange instanceof Exchange.Allowed allowed) {
          exchanges.put(step.order(), allowed);
        } else if (exchange instanceof Exchange.Refused no) {
          refused = no.reason() + " (" + no.printed().citation() + ")";
        }
      }
      if (!used) {
        throw new BadValueException(
            "substance at hand", one.name(), refused.isEmpty() ? takes(formula) : refused);
      }
    }
  }

  Optional<Exchange.Allowed> exchange(FormulaStep step) {
    return Optional.ofNullable(exchanges.get(step.order()));
  }

  private static String takes(Formula formula) {
    return "it stands in for nothing in "
        + formula.code()
        + ", which takes "
        + formula.steps().stream()
            .filter(step -> step.kind() == FormulaStep.Kind.INGREDIENT)
            .map(FormulaStep::ingredient)
            .collect(Collectors.joining(", "));
  }
}
