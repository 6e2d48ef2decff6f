package org.wetside.core.development;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.sensitometry.ContrastCurve;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * Contrast against time of one film in one developer.
 *
 * @param id identity of the row
 * @param filmCode the film
 * @param developer name of the developer
 * @param dilution dilution
 * @param temperature temperature it was measured at; empty when not stated
 * @param vessel tank it was measured in
 * @param measure what contrast means in it, for example {@code contrast index}
 * @param points the points
 * @param citation where it stands
 * @param standing how it is known
 */
public record ContrastSeries(
    String id,
    String filmCode,
    String developer,
    Dilution dilution,
    Optional<Temperature> temperature,
    Vessel vessel,
    String measure,
    List<ContrastPoint> points,
    Citation citation,
    Standing standing) {
  public ContrastSeries {
    points = List.copyOf(points);
  }

  /** The curve through the points. */
  public ContrastCurve curve() {
    return ContrastCurve.through(points);
  }
}
