package org.wetside.web.learning;

import org.wetside.web.page.Sheet;

/**
 * Model of the page on which a roll is judged.
 *
 * @param sheet the sheet
 * @param judge the form and what it says so far
 */
public record JudgePage(Sheet sheet, JudgePart judge) {}
