package org.wetside.web.negatives;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.learning.JudgePart;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.FilmTestLine;
import org.wetside.web.rolls.RollRow;

/**
 * Model of the record of a roll.
 *
 * @param sheet the sheet
 * @param roll the roll
 * @param developed whether there are negatives
 * @param filed whether they are in their sleeve
 * @param sleeve where they are kept; may be empty
 * @param note what its owner wrote
 * @param tests what tests say of its washing, and of its fixers since
 * @param runs what was done to it, the last first
 * @param file the form that files it
 * @param write the form of the note
 * @param judge where its negatives are judged; null before there are any
 */
public record RecordPage(
    Sheet sheet,
    RollRow roll,
    boolean developed,
    boolean filed,
    String sleeve,
    String note,
    List<FilmTestLine> tests,
    List<RunPart> runs,
    FilledForm file,
    FilledForm write,
    @Nullable JudgePart judge) {}
