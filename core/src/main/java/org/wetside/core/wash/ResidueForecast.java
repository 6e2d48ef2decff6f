package org.wetside.core.wash;

import java.time.Duration;
import java.util.List;
import org.wetside.core.quantity.ArealMass;

/**
 * What the two liquids leave on the film, by one half-time.
 *
 * @param basis the half-time on file
 * @param halfTime the same in water of this temperature
 * @param states after each change of water
 * @param residues on the film after each; each a lower bound
 */
public record ResidueForecast(
    HalfTime basis, Duration halfTime, List<InWash> states, List<ArealMass> residues) {
  public ResidueForecast {
    states = List.copyOf(states);
    residues = List.copyOf(residues);
  }

  /** At the end of the wash. */
  public ArealMass atEnd() {
    return residues.get(residues.size() - 1);
  }
}
