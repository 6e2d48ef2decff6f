package org.wetside.reference;

import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A short caution for the moment of handling. It replaces no safety data sheet.
 *
 * @param about the chemical, mixture or practice it is about
 * @param hazard what can happen
 * @param advice what to do; may be empty
 * @param citation where it was read or recalled from
 * @param standing how it is known
 */
public record Caution(
    String about, String hazard, String advice, Citation citation, Standing standing) {
  private static final String NONE = "no caution on file: read the maker's safety data sheet first";
  private static final String MIXTURE = "never together: ";

  /** What is said when nothing is on file: never nothing. */
  public static Caution none() {
    return new Caution("", NONE, "", Citation.of("TRADE"), Standing.COMMON_PRACTICE);
  }

  /** The same, naming what nothing is on file for. */
  public static Caution noneFor(String about) {
    return new Caution(about, NONE, "", Citation.of("TRADE"), Standing.COMMON_PRACTICE);
  }

  static Caution of(ReferenceRow row) {
    String before = row.text("kind").equals("mixture") ? MIXTURE : "";
    return new Caution(
        before + row.text("substance"),
        row.text("hazard"),
        row.text("advice"),
        row.citation(),
        row.standing());
  }

  /** Whether it only says that nothing is on file. */
  public boolean isNone() {
    return hazard.equals(NONE);
  }

  /** Whether it is about what must never meet. */
  public boolean isOfMixture() {
    return about.startsWith(MIXTURE);
  }

  /** One line, for example {@code metol: skin/eye effects; gloves, no dust}. */
  public String line() {
    String said = about.isEmpty() ? hazard : about + ": " + hazard;
    return advice.isEmpty() ? said : said + "; " + advice;
  }
}
