package org.wetside.web.formula;

/**
 * What really went in.
 *
 * @param amount with its unit, for example {@code 140.1g} or {@code 455mL}
 */
public record BatchStepBody(String amount) {}
