package org.wetside.web.times;

import org.wetside.app.times.ListTimes;
import org.wetside.app.times.OwnLine;

/**
 * One of the user's own times; empty means not stated.
 *
 * @param id for withdrawing it
 * @param film name or code
 * @param developer name
 * @param dilution dilution
 * @param ei exposure index
 * @param temp temperature with its unit
 * @param minutes minutes and seconds, or a range
 * @param vessel tank
 * @param agitation way of agitating
 * @param contrast contrast aimed at
 * @param source where it is printed
 */
public record OwnTimeView(
    String id,
    String film,
    String developer,
    String dilution,
    String ei,
    String temp,
    String minutes,
    String vessel,
    String agitation,
    String contrast,
    String source) {
  /** From a listed entry. */
  public static OwnTimeView of(ListTimes.Listed listed) {
    OwnLine line = listed.line();
    return new OwnTimeView(
        listed.id(),
        line.film(),
        line.developer(),
        line.dilution(),
        line.ei(),
        line.temp(),
        line.minutes(),
        line.vessel(),
        line.agitation(),
        line.contrast(),
        line.source());
  }
}
