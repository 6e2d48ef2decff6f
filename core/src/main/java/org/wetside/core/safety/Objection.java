package org.wetside.core.safety;

import java.util.List;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;

/**
 * What speaks against a combination.
 *
 * @param first name of the one thing
 * @param second name of the other; empty when one thing alone matters
 * @param position where the second stands in the order that was asked about, from 0; 0 when there
 *     was no order
 * @param rule the rule, with reason and source
 */
public record Objection(String first, String second, int position, CombinationRule rule) {

  /** Whether it must not be done. */
  public boolean isRefused() {
    return rule.severity() == CombinationRule.Severity.REFUSED;
  }

  /** Both things: {@code bottle S into bottle F}. */
  public String things() {
    return switch (rule.meeting()) {
      case ALONE -> first;
      case INTO -> first + " into " + second;
      case TOGETHER -> first + " with " + second;
      case IN_TURN -> second + " straight after " + first;
    };
  }

  /** Reason, advice, source and standing. */
  public String reason() {
    String advice = rule.advice().isEmpty() ? "" : "; " + rule.advice();
    return rule.hazard() + advice + " (" + rule.citation() + ", " + rule.standing().word() + ")";
  }

  /** The whole of it in one line. */
  public String sentence() {
    return things() + ": " + reason();
  }

  /**
   * Lets pass what may be done.
   *
   * @throws BadValueException naming both things, the reason and the source of everything refused
   */
  public static void requireNoneRefused(List<Objection> objections) {
    List<Objection> refused = objections.stream().filter(Objection::isRefused).toList();
    if (!refused.isEmpty()) {
      throw new BadValueException(
          "combination",
          refused.get(0).things(),
          refused.get(0).reason()
              + refused.stream()
                  .skip(1)
                  .map(one -> "; and " + one.sentence())
                  .collect(Collectors.joining()));
    }
  }
}
