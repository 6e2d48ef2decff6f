package org.wetside.web.mixing;

import org.jspecify.annotations.Nullable;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page that brings all baths of a load to their temperatures.
 *
 * @param sheet the sheet
 * @param load number of the load
 * @param form what was typed
 * @param answer what to do; null when what was typed is refused
 */
public record TemperLoadPage(
    Sheet sheet, long load, FilledForm form, @Nullable TemperLoadView answer) {

  /** Minutes as they are read off; empty when there are none. */
  public static String minutes(@Nullable Double minutes) {
    return minutes == null ? "" : Math.round(minutes) + " min";
  }
}
