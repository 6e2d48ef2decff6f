package org.wetside.app.wash;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Volume;
import org.wetside.core.wash.Drying;
import org.wetside.reference.Washes;

/** From the last water to dry film: wetting agent, hanging, and when it may be touched. */
public final class PlanDrying {
  /**
   * What to do.
   *
   * @param agent concentrate and distilled water
   * @param dilutionOnFile whether the dilution is the one on file, not one from a bottle
   * @param about the rows it rests on
   */
  public record Answer(WorkingSolution agent, boolean dilutionOnFile, Drying about) {
    /** How long after hanging nothing may touch the film; the longest that is named. */
    public Duration untouched(Drying.Way way) {
      return way.most();
    }
  }

  /**
   * Plans it for a tank of that fill.
   *
   * @param dilution as the bottle of wetting agent says; empty takes the one on file
   * @throws BadValueException when the fill is 0
   */
  public Answer answer(Volume fill, Optional<DilutionRatio> dilution) {
    Drying drying = Washes.drying();
    return new Answer(drying.agent().of(fill, dilution), dilution.isEmpty(), drying);
  }
}
