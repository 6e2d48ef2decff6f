package org.wetside.core.learning;

import java.time.Instant;
import java.util.Optional;
import org.wetside.core.quantity.ExposureIndex;

/**
 * A judged roll: facts only. What they say of the factor is worked out when it is asked ({@link
 * Reading}), so that better figures make better factors of old rolls too.
 *
 * @param id identity; 0 before it is stored
 * @param roll number of the roll
 * @param of film and developer
 * @param film the film as people call it
 * @param index the index it was exposed at; empty when not said
 * @param at when it was judged
 * @param seen what was seen
 * @param developed how it was developed
 * @param used what may have made it differ
 */
public record Judgement(
    long id,
    String roll,
    FilmInDeveloper of,
    String film,
    Optional<ExposureIndex> index,
    Instant at,
    Seen seen,
    Developed developed,
    Used used) {
  /** The same under the identity the store gave it. */
  public Judgement withId(long given) {
    return new Judgement(given, roll, of, film, index, at, seen, developed, used);
  }
}
