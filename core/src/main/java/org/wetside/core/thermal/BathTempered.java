package org.wetside.core.thermal;

import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * How one bath is brought to its temperature.
 *
 * @param bath what is wanted
 * @param way what is done
 * @param waters what to pour: of the bath itself, or of the water its bottle stands in
 * @param water how much water that is together, for one fill
 * @param asItComes what it has when nothing is tempered
 * @param keeps for how many time constants of the drift it stays in its band once it is there;
 *     infinite where the room itself lies in the band
 * @param atPour what it has when it is poured, made at the target before the first pour; empty
 *     while the time constant is not known
 * @param byItself when it would come into its band by itself; empty likewise
 */
public record BathTempered(
    BathWanted bath,
    Way way,
    Tempering waters,
    Volume water,
    Temperature asItComes,
    double keeps,
    Optional<Temperature> atPour,
    Optional<TimeInBand> byItself) {

  /** What is done to it. */
  public enum Way {
    /** Its bottle stands in warmer or colder water: begun first, it takes longest. */
    STAND_IN_WATER,
    /** It is mixed from waters. */
    MIX,
    /** Nothing: it is in its band as it comes. */
    AS_IT_COMES
  }
}
