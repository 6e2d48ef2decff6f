package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.StepTablet;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of a tablet.
 *
 * @param sheet the sheet
 * @param tablet as it is kept; null for a new one
 * @param form as it was typed
 */
public record TabletPage(Sheet sheet, @Nullable StepTablet tablet, FilledForm form) {
  /** Where it is taken away. */
  public String removal() {
    return tablet == null ? "" : DensityAddress.tablet(tablet.name()) + "/remove";
  }
}
