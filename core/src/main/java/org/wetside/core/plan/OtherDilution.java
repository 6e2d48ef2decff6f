package org.wetside.core.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.source.Standing;

/**
 * The time of films that lie in another dilution than was planned.
 *
 * @param dilution what was really mixed
 * @param time the time of the first film; its standing is that of the weakest among all
 * @param apart the films that would want another time, with it
 */
public record OtherDilution(Dilution dilution, ChosenTime time, List<FilmTime> apart) {
  /**
   * What one film wants.
   *
   * @param film what it is called
   * @param time its time; empty when there is no honest one
   */
  public record FilmTime(String film, Optional<ChosenTime> time) {}

  public OtherDilution {
    apart = List.copyOf(apart);
  }

  /**
   * Of the films of one tank, the first leading; empty when there is no honest time for each.
   *
   * @param films at least one
   */
  public static Optional<OtherDilution> of(Dilution dilution, List<FilmTime> films) {
    if (films.stream().anyMatch(film -> film.time().isEmpty())) {
      return Optional.empty();
    }
    ChosenTime first = films.get(0).time().orElseThrow();
    Standing weakest =
        films.stream()
            .map(film -> film.time().orElseThrow().standing())
            .reduce(first.standing(), Standing::weaker);
    return Optional.of(
        new OtherDilution(
            dilution,
            new ChosenTime(first.time(), weakest, first.source(), first.band()),
            films.stream().filter(film -> differs(film, first.time())).distinct().toList()));
  }

  /** By a second or more, so that no difference is said that nobody could keep. */
  private static boolean differs(FilmTime film, Duration first) {
    Duration apart = film.time().orElseThrow().time().minus(first).abs();
    return apart.compareTo(Duration.ofSeconds(1)) >= 0;
  }
}
