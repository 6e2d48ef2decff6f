package org.wetside.app.times;

/**
 * One time as typed or as it stands in a file; empty means not stated.
 *
 * @param film name or code, or the user's own name; required
 * @param developer name; required
 * @param dilution {@code stock}, {@code 1+n} or a letter
 * @param ei exposure index
 * @param temp temperature with its unit
 * @param minutes {@code 9:45}, {@code 9.75}, or a range {@code 7:00-8:00}; required
 * @param vessel {@code small}, {@code large}, {@code rotary} or {@code tray}
 * @param agitation way of agitating, {@code ordinary} when empty
 * @param contrast contrast aimed at, in the source's words
 * @param source where it is printed
 */
public record OwnLine(
    String film,
    String developer,
    String dilution,
    String ei,
    String temp,
    String minutes,
    String vessel,
    String agitation,
    String contrast,
    String source) {}
