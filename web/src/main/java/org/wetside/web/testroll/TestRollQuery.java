package org.wetside.web.testroll;

import org.jspecify.annotations.Nullable;
import org.wetside.app.testroll.TestRollDraft;

/**
 * A test roll as it was typed; null or blank is not said.
 *
 * @param film in the user's words
 * @param index the exposure index that the meter is set to, for example {@code 400}
 * @param metered what it says for the card, for example {@code 1/60@f8}
 * @param middle time of the second piece, for example {@code 8min}
 * @param developer in the user's words
 * @param dilution of it, for example {@code 1+1}
 * @param temp temperature of the developer, for example {@code 20C}
 * @param vessel small, large, rotary or tray
 * @param frames on the roll; 36 when it is not said
 * @param fastest shutter speed of the camera; 1/1000 when it is not said
 * @param slowest shutter speed to use; 1/2 when it is not said
 * @param widest aperture of the lens; f/2 when it is not said
 * @param smallest aperture of the lens; f/16 when it is not said
 */
public record TestRollQuery(
    @Nullable String film,
    @Nullable String index,
    @Nullable String metered,
    @Nullable String middle,
    @Nullable String developer,
    @Nullable String dilution,
    @Nullable String temp,
    @Nullable String vessel,
    @Nullable String frames,
    @Nullable String fastest,
    @Nullable String slowest,
    @Nullable String widest,
    @Nullable String smallest) {
  /** The same, to be read. */
  public TestRollDraft draft() {
    return new TestRollDraft(
        text(film),
        text(index),
        text(developer),
        text(dilution),
        text(temp),
        text(vessel),
        text(metered),
        text(middle),
        text(frames),
        text(fastest),
        text(slowest),
        text(widest),
        text(smallest));
  }

  private static String text(@Nullable String said) {
    return said == null ? "" : said;
  }
}
