package org.wetside.core.chemistry;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A bath as a recipe.
 *
 * @param code short name, for example {@code D-76}
 * @param name what it is called
 * @param kind what it is for, for example {@code film developer}
 * @param offer what may be done with it
 * @param reason why it cannot be mixed; empty when it can
 * @param basis the volume its amounts are for; empty when that is not known
 * @param steps in order of dissolving
 * @param own whether the user wrote it
 * @param note limits and disagreements; may be empty
 * @param citation where it is printed
 * @param standing how it is known
 */
public record Formula(
    String code,
    String name,
    String kind,
    Offer offer,
    String reason,
    Optional<Volume> basis,
    List<FormulaStep> steps,
    boolean own,
    String note,
    Citation citation,
    Standing standing) {
  /** Keeps an unmodifiable copy. */
  public Formula {
    steps = List.copyOf(steps);
  }

  /** Why it cannot be mixed; empty when it can. */
  public Optional<String> refusal() {
    if (offer == Offer.HISTORY) {
      return Optional.of("it is kept as history and not for mixing: " + reason);
    }
    if (offer == Offer.TEST_KIT) {
      return Optional.of("it is a test kit, made up by its own instructions and not as a bath");
    }
    for (FormulaStep step : steps) {
      if (!step.hasAmount()) {
        return Optional.of("the amount of " + step.ingredient() + " is missing");
      }
    }
    return basis.isPresent()
        ? Optional.empty()
        : Optional.of("the volume that its amounts are for is not known");
  }

  /** The volume the amounts are for: as made up, else all that is liquid in it. */
  public static Optional<Volume> basisOf(List<FormulaStep> steps, boolean perLitre) {
    Volume all = Volume.ZERO;
    for (FormulaStep step : steps) {
      if (step.kind() == FormulaStep.Kind.WATER_TO_MAKE && step.volume().isPresent()) {
        return step.volume();
      }
      all = all.plus(step.volume().orElse(Volume.ZERO));
    }
    if (perLitre) {
      return Optional.of(Volume.ofLitres(1));
    }
    return all.millilitres() > 0 ? Optional.of(all) : Optional.empty();
  }
}
