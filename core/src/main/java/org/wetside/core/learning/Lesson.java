package org.wetside.core.learning;

import java.util.List;
import java.util.Optional;

/**
 * What was learned of one film in one developer.
 *
 * @param of film and developer
 * @param film the film as people call it
 * @param time the factor; empty when no roll says anything of it
 * @param index the own index; empty when no roll says anything of it
 * @param rolls every judged roll of it with what it says, in the order of their development
 */
public record Lesson(
    FilmInDeveloper of,
    String film,
    Optional<OwnTime> time,
    Optional<OwnIndex> index,
    List<Told> rolls) {
  /**
   * A judged roll and what it says.
   *
   * @param roll the roll
   * @param time of the factor
   * @param index of the exposure index
   */
  public record Told(Judgement roll, Reading time, Reading index) {}

  /** Whether the factor rests, in part at least, on words, whose worth is a judgement. */
  public boolean timeByWords() {
    return rolls.stream().anyMatch(told -> told.time().byWord());
  }

  /** The same of the index. */
  public boolean indexByWords() {
    return rolls.stream().anyMatch(told -> told.index().byWord());
  }

  /** Keeps an unmodifiable copy. */
  public Lesson {
    rolls = List.copyOf(rolls);
  }
}
