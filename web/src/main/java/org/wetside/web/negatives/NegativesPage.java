package org.wetside.web.negatives;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.RollRow;

/**
 * Model of the Negatives.
 *
 * @param sheet the sheet
 * @param newest developed rolls, the newest first
 * @param unfiled how many of them have no sleeve yet
 * @param find words to find a roll by
 * @param found what they found among the negatives; null when nothing was asked
 */
public record NegativesPage(
    Sheet sheet, List<RollRow> newest, long unfiled, String find, @Nullable List<RollRow> found) {}
