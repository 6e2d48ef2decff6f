package org.wetside.app.testroll;

/**
 * A test roll as it is typed; empty is not said.
 *
 * @param film in the user's words
 * @param index exposure index that the meter is set to, for example {@code 400}
 * @param developer in the user's words
 * @param dilution {@code stock}, {@code 1+1} or a letter
 * @param temp temperature of the developer
 * @param vessel small, large, rotary or tray
 * @param metered what the meter says for the card, for example {@code 1/60@f8}; required
 * @param middle time of the second piece, for example {@code 8min}; required
 * @param frames on the roll; 36 when it is not said
 * @param fastest shutter speed of the camera; 1/1000 when it is not said
 * @param slowest shutter speed to use; 1/2 when it is not said
 * @param widest aperture of the lens; f/2 when it is not said
 * @param smallest aperture of the lens; f/16 when it is not said
 */
public record TestRollDraft(
    String film,
    String index,
    String developer,
    String dilution,
    String temp,
    String vessel,
    String metered,
    String middle,
    String frames,
    String fastest,
    String slowest,
    String widest,
    String smallest) {}
