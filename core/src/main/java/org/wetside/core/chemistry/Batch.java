package org.wetside.core.chemistry;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * Something that is mixed, or was.
 *
 * @param id its number; 0 before it is kept
 * @param formula short name of the formula
 * @param name what that is called
 * @param kind what it is for
 * @param total volume made
 * @param balance it is weighed on
 * @param standing of the formula
 * @param begunAt when mixing began
 * @param bottle letter of the bottle it went into; empty when in none
 * @param steps in order of dissolving
 */
public record Batch(
    long id,
    String formula,
    String name,
    String kind,
    Volume total,
    Balance balance,
    Standing standing,
    Instant begunAt,
    Optional<String> bottle,
    List<Step> steps) {
  /** Keeps an unmodifiable copy. */
  public Batch {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param position from 1
   * @param ingredient what goes in
   * @param mass planned; empty for what is poured
   * @param volume planned; empty for what is weighed
   * @param how advice for it; may be empty
   * @param weighed what really went in; empty until then, and for what is poured
   * @param measured what really went in; empty until then, and for what is weighed
   * @param doneAt when; empty until then
   */
  public record Step(
      int position,
      String ingredient,
      Optional<Mass> mass,
      Optional<Volume> volume,
      String how,
      Optional<Mass> weighed,
      Optional<Volume> measured,
      Optional<Instant> doneAt) {
    /** Whether it is done. */
    public boolean isDone() {
      return doneAt.isPresent();
    }

    /** How far what went in is from what was planned, percent; 0 until it is done. */
    public double offPercent() {
      if (weighed.isPresent() && mass.isPresent()) {
        return 100 * (weighed.get().ratioTo(mass.get()) - 1);
      }
      return measured.isPresent() && volume.isPresent()
          ? 100 * (measured.get().ratioTo(volume.get()) - 1)
          : 0;
    }
  }

  /** The step that is next; empty when all are done. */
  public Optional<Step> next() {
    return steps.stream().filter(step -> !step.isDone()).findFirst();
  }

  /** Whether every step is done. */
  public boolean isMixed() {
    return next().isEmpty();
  }
}
