package org.wetside.core.chemistry;

import java.util.Optional;
import org.wetside.core.source.Citation;

/** Whether one substance may stand in for another, and by which factor. */
public sealed interface Exchange {
  /**
   * It may: multiply the amount specified by the factor.
   *
   * @param specified what the formula asks for
   * @param held what is there
   * @param factor amount of what is held for one of what is specified, dimensionless
   * @param citation what the factor is computed from
   * @param printed what a handbook prints beside it
   */
  record Allowed(
      Substance specified,
      Substance held,
      double factor,
      Citation citation,
      Optional<PrintedFactor> printed)
      implements Exchange {}

  /**
   * It must not: acidity or buffering would change.
   *
   * @param reason why
   * @param printed the row that says so
   */
  record Refused(String reason, PrintedFactor printed) implements Exchange {}

  /** Nothing is known of such an exchange. */
  record Unknown() implements Exchange {}
}
