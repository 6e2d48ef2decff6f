package org.wetside.core.wash;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * From the last water to dry film.
 *
 * @param agent the bath of wetting agent
 * @param ways of hanging the film up, the usual one first; at least one
 */
public record Drying(Agent agent, List<Way> ways) {
  public Drying {
    ways = List.copyOf(ways);
  }

  /**
   * Wetting agent in distilled water.
   *
   * @param words what to do with it
   * @param dilution in parts; the words on the bottle come first
   * @param dilutionStanding how the dilution is known
   * @param least shortest time in it
   * @param most longest time in it
   * @param citation of the times
   * @param standing of the times
   */
  public record Agent(
      String words,
      DilutionRatio dilution,
      Standing dilutionStanding,
      Duration least,
      Duration most,
      Citation citation,
      Standing standing) {
    /** What to measure out for a tank of that fill, at another dilution when the bottle says so. */
    public WorkingSolution of(Volume fill, Optional<DilutionRatio> asTheBottleSays) {
      return WorkingSolution.of(asTheBottleSays.orElse(dilution), fill);
    }
  }

  /**
   * A place to hang.
   *
   * @param place short name, for example {@code room}
   * @param words what it is like
   * @param least shortest time until it is dry
   * @param most not to be touched before
   * @param warmest it may be there
   * @param citation where it is printed or recalled from
   * @param standing how it is known
   * @param note what to know of it; may be empty
   */
  public record Way(
      String place,
      String words,
      Duration least,
      Duration most,
      Temperature warmest,
      Citation citation,
      Standing standing,
      String note) {}
}
