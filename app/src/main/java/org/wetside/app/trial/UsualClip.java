package org.wetside.app.trial;

import java.util.Optional;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Clearing;

/** What a clip of a bottle usually is, so that little has to be typed at the sink. */
public final class UsualClip {
  /** Said of a bottle whose label does not tell; the same for all its tests. */
  private static final String AS_IS = "as in the bottle";

  private UsualClip() {}

  /** The clearing time in fresh solution, if one was taken. */
  public static Optional<Clearing> baseline(Bottle bottle) {
    return bottle.state().baseline().flatMap(test -> test.what().clearing());
  }

  /** How the fixer was made: as its baseline says, else its label. */
  public static String dilution(Bottle bottle) {
    return baseline(bottle)
        .map(Clearing::dilution)
        .orElseGet(
            () ->
                !bottle.label().dilution().isEmpty()
                    ? bottle.label().dilution()
                    : bottle.label().role() == BottleRole.STOCK ? "stock" : AS_IS);
  }
}
