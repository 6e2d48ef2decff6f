package org.wetside.core.development;

import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A maker's word that a raised index needs no other development.
 *
 * @param filmCode the film
 * @param developer name of the developer, empty for all
 * @param from index of normal use
 * @param to the raised index
 * @param citation where it stands
 * @param standing how it is known
 */
public record IndexRule(
    String filmCode,
    String developer,
    ExposureIndex from,
    ExposureIndex to,
    Citation citation,
    Standing standing) {
  /** Whether the rule speaks of this step. */
  boolean covers(String film, String developerName, double fromIndex, double toIndex) {
    return filmCode.equals(film)
        && (developer.isEmpty() || developer.equals(developerName))
        && fromIndex < toIndex
        && from.isoArithmetic() <= fromIndex * 1.04
        && toIndex <= to.isoArithmetic() * 1.04;
  }
}
