package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;

/**
 * An ordered list of steps under a name: from the first pour to hanging the film.
 *
 * @param slug short name used in commands and addresses: lower-case letters, digits and dashes
 * @param name as people call it
 * @param about one or two sentences: what it is for, what to know before using it
 * @param builtIn whether it came with the program; such a one is copied, not changed
 * @param steps at least one
 */
public record FilmProcess(
    String slug, String name, String about, boolean builtIn, List<Step> steps) {
  public FilmProcess {
    if (!slug.matches("[a-z0-9]+(-[a-z0-9]+)*") || slug.length() > 60) {
      throw new BadValueException(
          "process short name", slug, "lower-case letters, digits and dashes, at most 60");
    }
    if (name.isBlank() || name.length() > 100) {
      throw new BadValueException("process name", name, "1 to 100 characters");
    }
    steps = List.copyOf(steps);
    if (steps.isEmpty() || steps.size() > 40) {
      throw new BadValueException("process", steps.size() + " steps", "1 to 40 steps");
    }
  }

  /** The weakest standing among its steps. */
  public Standing standing() {
    return steps.stream().map(Step::standing).reduce(Standing.MEASURED, Standing::weaker);
  }

  /** The same process with its first developing bath (or monobath) lasting the given time. */
  public FilmProcess withDevelopment(Duration time) {
    List<Step> changed = new ArrayList<>(steps);
    for (int i = 0; i < changed.size(); i++) {
      Step step = changed.get(i);
      if (step.kind().developing() || step.kind() == StepKind.MONOBATH) {
        changed.set(i, step.withDuration(time));
        return new FilmProcess(slug, name, about, builtIn, changed);
      }
    }
    throw new BadValueException("process", slug, "it has no developer whose time could be set");
  }

  /**
   * The same process with another way to wash: the steps of {@code wash} stand in place of the run
   * of rinses, wash aids and washes after the last fixing step.
   *
   * @throws BadValueException when the process has no wash
   */
  public FilmProcess withWash(List<Step> wash) {
    int end = steps.size();
    while (end > 0 && !washes(steps.get(end - 1))) {
      end--;
    }
    int begin = end;
    while (begin > 0 && washes(steps.get(begin - 1))) {
      begin--;
    }
    if (end == 0) {
      throw new BadValueException("process", slug, "it has no wash that could be exchanged");
    }
    List<Step> changed = new ArrayList<>(steps.subList(0, begin));
    changed.addAll(wash);
    changed.addAll(steps.subList(end, steps.size()));
    return new FilmProcess(slug, name, about, builtIn, changed);
  }

  private static boolean washes(Step step) {
    return step.kind() == StepKind.RINSE
        || step.kind() == StepKind.WASH_AID
        || step.kind() == StepKind.WASH;
  }
}
