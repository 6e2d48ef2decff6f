package org.wetside.web.times;

import java.util.List;
import org.wetside.core.development.BasisStep;

/**
 * One step of the way to a time.
 *
 * @param step which step: entry, temperature, dilution, exposure index, contrast, tank
 * @param text what was done
 * @param factor what the time was multiplied by
 * @param lnSd standard deviation it adds, in ln(time)
 * @param standing how it is known
 * @param source where it is from
 * @param locator page or table there
 * @param printedTemperatures the printed temperatures it used
 */
public record StepView(
    String step,
    String text,
    double factor,
    double lnSd,
    String standing,
    String source,
    String locator,
    List<String> printedTemperatures) {
  static StepView of(BasisStep step) {
    return new StepView(
        step.kind().word(),
        step.description(),
        Math.round(step.factor() * 1e4) / 1e4,
        Math.round(step.lnSd() * 1e4) / 1e4,
        step.standing().word(),
        step.citation().sourceId(),
        step.citation().locator(),
        step.printedTemperatures());
  }
}
