package org.wetside.web.process;

import org.wetside.app.process.OrderWarning;

/**
 * Two baths that should not follow one another as they are.
 *
 * @param step number of the second of them, from 1
 * @param text both baths, the reason, the source and its standing
 * @param rinse whether a rinse put before that step is the way out
 * @param source what the reason is cited from
 * @param standing how it is known
 */
public record OrderWarningView(
    int step, String text, boolean rinse, String source, String standing) {
  /** The view of a warning. */
  public static OrderWarningView of(OrderWarning warning) {
    return new OrderWarningView(
        warning.step(),
        warning.objection().sentence(),
        warning.rinseHelps(),
        warning.objection().rule().citation().toString(),
        warning.objection().rule().standing().word());
  }
}
