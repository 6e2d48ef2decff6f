package org.wetside.app.times;

/**
 * A question as typed; empty where nothing was said.
 *
 * @param film name or code
 * @param developer name
 * @param dilution {@code stock}, {@code 1+1}, {@code B}
 * @param ei exposure index
 * @param temp temperature with its unit
 * @param vessel {@code small}, {@code large}, {@code rotary} or {@code tray}; empty for small
 * @param format {@code 135}, {@code 120}, {@code sheet}; empty for any
 * @param agitation empty for the developer's usual way
 * @param aim contrast index wanted; empty for the source's own
 * @param beyond whether a temperature outside 18 to 24 °C is wished for
 */
public record TimeRequest(
    String film,
    String developer,
    String dilution,
    String ei,
    String temp,
    String vessel,
    String format,
    String agitation,
    String aim,
    boolean beyond) {}
