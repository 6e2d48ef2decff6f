package org.wetside.core.run;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.shelf.BottleMark;

/**
 * Which bottles the mishaps of a run leave in doubt. Only what still counts does: a mishap that was
 * taken back marks nothing.
 */
public final class BottleMishaps {
  private BottleMishaps() {}

  /**
   * A bottle in doubt.
   *
   * @param letter the bottle
   * @param mark what is to stand on it
   * @param why in a few words
   */
  public record InDoubt(String letter, BottleMark mark, String why) {}

  /** The bottles in doubt as the run stands, in the order of the mishaps. */
  public static Set<InDoubt> of(RunState state) {
    Set<InDoubt> all = new LinkedHashSet<>();
    for (RunEvent event : state.applied()) {
      if (event.what() instanceof Happening.Mishap mishap) {
        if (mishap.what().equals(MishapAdvice.WRONG_BOTTLE)) {
          state.plan().step(event.step()).bottle().ifPresent(own -> all.add(wrong(own)));
          if (!mishap.about().isBlank()) {
            all.add(wrong(mishap.about()));
          }
        } else if (mishap.what().equals(MishapAdvice.NO_RINSE)) {
          unrinsed(state.plan(), event.step()).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private static InDoubt wrong(String letter) {
    return new InDoubt(letter, BottleMark.DO_NOT_USE, "wrong bottle, decide");
  }

  /**
   * The bath the film went into without a rinse: the one it is in when a rinse came before it, else
   * the next from a bottle. What is thrown away after use leaves no bottle in doubt.
   */
  private static Optional<InDoubt> unrinsed(RunPlan plan, int told) {
    boolean already =
        told > 0 && rinse(plan.step(told - 1)) && plan.step(told).bottle().isPresent();
    for (int i = already ? told : told + 1; i < plan.steps().size(); i++) {
      Step step = plan.step(i);
      if (step.bottle().isPresent()) {
        return step.afterUse()
            .bottle()
            .map(
                letter ->
                    new InDoubt(
                        letter,
                        BottleMark.TEST_FIRST,
                        "no rinse before the " + step.kind().word()));
      }
    }
    return Optional.empty();
  }

  private static boolean rinse(Step step) {
    return step.kind() == StepKind.RINSE || step.kind() == StepKind.WASH;
  }
}
