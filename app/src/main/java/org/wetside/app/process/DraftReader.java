package org.wetside.app.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Light;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;

/** Reads a process as it was typed: every step, and what must hold between them. */
final class DraftReader {
  private static final int MOST_STEPS = 40;
  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_ABOUT = 1000;

  private final List<ProcessFault> faults = new ArrayList<>();

  /** Everything that is wrong, so far. */
  List<ProcessFault> faults() {
    return faults;
  }

  void refuse(String field, String thing, String given, String limit) {
    faults.add(
        new ProcessFault(
            0, field, String.valueOf(new BadValueException(thing, given, limit).getMessage())));
  }

  /** The process; empty when something is wrong. */
  Optional<FilmProcess> read(String slug, ProcessDraft draft) {
    if (draft.name().isEmpty() || draft.name().length() > LONGEST_NAME) {
      refuse("name", "process name", draft.name(), "1 to " + LONGEST_NAME + " characters");
    }
    if (draft.about().length() > LONGEST_ABOUT) {
      refuse(
          "about",
          "what it is for",
          draft.about().length() + " characters",
          "at most " + LONGEST_ABOUT + " characters");
    }
    if (draft.steps().isEmpty() || draft.steps().size() > MOST_STEPS) {
      refuse("steps", "process", draft.steps().size() + " steps", "1 to " + MOST_STEPS + " steps");
      return Optional.empty();
    }
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < draft.steps().size(); i++) {
      new StepReader(i + 1, draft.steps().get(i), faults).read().ifPresent(steps::add);
    }
    if (steps.size() == draft.steps().size()) {
      checkTimes(steps);
      checkLight(steps);
    }
    try {
      return faults.isEmpty()
          ? Optional.of(new FilmProcess(slug, draft.name(), draft.about(), false, steps))
          : Optional.empty();
    } catch (BadValueException refusal) {
      faults.add(new ProcessFault(0, "slug", String.valueOf(refusal.getMessage())));
      return Optional.empty();
    }
  }

  /** A load says how long the first developer stays; nobody says it of any other bath. */
  private void checkTimes(List<Step> steps) {
    boolean developed = false;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      boolean first = !developed && develops(step.kind());
      developed |= first;
      if (!first && step.duration().isEmpty()) {
        refuse(
            i + 1,
            StepField.TIME,
            new BadValueException(
                step.kind().word() + " time",
                "",
                "it is needed; only the first developer's may come from the load"));
      }
    }
    if (!developed) {
      refuse(
          "steps",
          "process",
          steps.size() + " steps",
          "one of them must be a developer or a monobath, for that is what a load is led by");
    }
  }

  /** Light that was seen cannot be unseen. */
  private void checkLight(List<Step> steps) {
    boolean seen = false;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      boolean fogs =
          (step.kind().developing() && step.kind() != StepKind.SECOND_DEVELOPER)
              || step.kind() == StepKind.TWO_BATH_B
              || step.kind() == StepKind.MONOBATH;
      if (step.light() != Light.DARK && fogs) {
        refuse(
            i + 1,
            StepField.LIGHT,
            new BadValueException(
                step.kind().word() + " light", step.light().word(), "dark, or the film is fogged"));
      } else if (step.light() == Light.DARK && seen) {
        refuse(
            i + 1,
            StepField.LIGHT,
            new BadValueException(
                step.kind().word() + " light",
                step.light().word(),
                "the film has seen light in a step before"));
      }
      seen |= step.light() != Light.DARK;
    }
  }

  private void refuse(int step, StepField field, BadValueException refusal) {
    faults.add(new ProcessFault(step, field.word(), String.valueOf(refusal.getMessage())));
  }

  private static boolean develops(StepKind kind) {
    return kind.developing() || kind == StepKind.MONOBATH;
  }
}
