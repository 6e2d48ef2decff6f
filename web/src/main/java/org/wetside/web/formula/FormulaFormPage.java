package org.wetside.web.formula;

import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the form for a formula of one's own.
 *
 * @param sheet the sheet
 * @param form what was typed
 */
public record FormulaFormPage(Sheet sheet, FilledForm form) {}
