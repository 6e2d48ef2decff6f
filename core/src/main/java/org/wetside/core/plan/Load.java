package org.wetside.core.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * Rolls in one tank, at one developer, dilution, temperature and time.
 *
 * @param id identity; 0 before it is stored
 * @param state where it is on its way
 * @param madeAt when it was made
 * @param rolls in their order in the tank, from the bottom; at least one
 * @param tank name of the tank
 * @param process short name of the process
 * @param recipe what it is developed in
 * @param time how long
 * @param fill liquid in the tank
 * @param bottles letter of the bottle each bath comes from; a bath without one is asked for
 * @param startsAt when the first pour is meant to be; empty when not said
 * @param note anything else; may be empty
 */
public record Load(
    long id,
    LoadState state,
    Instant madeAt,
    List<Place> rolls,
    String tank,
    String process,
    Recipe recipe,
    ChosenTime time,
    Volume fill,
    Map<BathKind, String> bottles,
    Optional<Instant> startsAt,
    String note) {
  /**
   * One roll in its place.
   *
   * @param number the roll
   * @param ownTime the time the estimate gave for it alone; empty when there was none
   * @param ownStanding standing of that time; present with it
   */
  public record Place(String number, Optional<Duration> ownTime, Optional<Standing> ownStanding) {}

  public Load {
    rolls = List.copyOf(rolls);
    bottles = Map.copyOf(bottles);
    if (rolls.isEmpty()) {
      throw new IllegalArgumentException("a load has at least one roll");
    }
  }

  /** The numbers of its rolls, from the bottom of the tank. */
  public List<String> numbers() {
    return rolls.stream().map(Place::number).toList();
  }

  /** The same under the identity the store gave it. */
  public Load withId(long given) {
    return new Load(
        given, state, madeAt, rolls, tank, process, recipe, time, fill, bottles, startsAt, note);
  }

  /** The same led by another process. */
  public Load withProcess(String other) {
    return new Load(
        id, state, madeAt, rolls, tank, other, recipe, time, fill, bottles, startsAt, note);
  }

  /** The same in another state. */
  public Load withState(LoadState other) {
    return new Load(
        id, other, madeAt, rolls, tank, process, recipe, time, fill, bottles, startsAt, note);
  }
}
