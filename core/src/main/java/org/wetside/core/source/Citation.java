package org.wetside.core.source;

/**
 * What a value is cited from.
 *
 * @param sourceId identity in the list of sources, for example {@code DV-S01}; for the user's own
 *     entries what they typed
 * @param locator page, table or figure; empty when the source is one page
 */
public record Citation(String sourceId, String locator) {
  /** A source without a locator. */
  public static Citation of(String sourceId) {
    return new Citation(sourceId, "");
  }

  /** For example {@code DV-T01, table 3.241 p.392}. */
  @Override
  public String toString() {
    return locator.isEmpty() ? sourceId : sourceId + ", " + locator;
  }
}
