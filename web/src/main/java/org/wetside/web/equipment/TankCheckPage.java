package org.wetside.web.equipment;

import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of what is looked at when a tank is closed.
 *
 * @param sheet the sheet
 * @param tank its name
 * @param form the list as lines
 */
public record TankCheckPage(Sheet sheet, String tank, FilledForm form) {}
