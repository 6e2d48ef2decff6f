package org.wetside.core.instrument;

import org.wetside.core.quantity.OpticalDensity;

/**
 * One step of a tablet.
 *
 * @param label what it is called on the tablet, usually its number
 * @param density as measured for this tablet, not as printed for its kind
 */
public record TabletStep(String label, OpticalDensity density) {
  /** Takes blanks around the label away. */
  public TabletStep {
    label = ThingName.requireLabel(label, "step of the tablet");
  }
}
