package org.wetside.web.drawer;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.core.plan.RollBatch;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.RollRow;

/**
 * Model of the Drawer.
 *
 * @param sheet the sheet
 * @param waiting rolls that wait, the oldest first
 * @param loaded rolls in a load
 * @param processed rolls that hang or wait for their sleeve
 * @param filed how many are filed
 * @param withdrawn rolls that were taken out
 * @param find words to find a roll by
 * @param found what they found; null when nothing was asked
 * @param forms the three ways to put rolls in, as typed
 * @param badLines lines of a paste that are no rolls
 * @param ownIndexes own indexes that are in use, in words; empty without any
 * @param pickMessage why no load could be made of what was ticked; null otherwise
 */
public record DrawerPage(
    Sheet sheet,
    List<RollRow> waiting,
    List<RollRow> loaded,
    List<RollRow> processed,
    int filed,
    List<RollRow> withdrawn,
    String find,
    @Nullable List<RollRow> found,
    Forms forms,
    List<RollBatch.BadLine> badLines,
    String ownIndexes,
    @Nullable String pickMessage) {
  /**
   * The three ways to put rolls in.
   *
   * @param line one line
   * @param roll field by field
   * @param many many lines at once
   */
  public record Forms(FilledForm line, FilledForm roll, FilledForm many) {
    static Forms fresh() {
      return new Forms(FilledForm.empty(), RollForm.fresh(), FilledForm.empty());
    }

    boolean isRefused() {
      return line.isRefused() || roll.isRefused() || many.isRefused();
    }
  }

  /** The same with what was wrong with pasted lines, and with what was ticked. */
  DrawerPage saying(List<RollBatch.BadLine> lines, @Nullable String aboutTicks) {
    return new DrawerPage(
        sheet,
        waiting,
        loaded,
        processed,
        filed,
        withdrawn,
        find,
        found,
        forms,
        lines,
        ownIndexes,
        aboutTicks);
  }

  /** Whether anything typed was refused. */
  public boolean isRefused() {
    return forms.isRefused();
  }

  /** Whether no roll was ever put in. */
  public boolean isEmpty() {
    return waiting.isEmpty()
        && loaded.isEmpty()
        && processed.isEmpty()
        && withdrawn.isEmpty()
        && filed == 0;
  }

  /** Rolls whose film may be several. */
  public List<RollRow> undecided() {
    return waiting.stream().filter(row -> !row.mayBe().isEmpty()).toList();
  }

  /** How many of those that wait must not fail. */
  public long precious() {
    return waiting.stream().filter(RollRow::precious).count();
  }

  /** Sizes to choose from. */
  public Map<String, String> sizes() {
    return RollForm.sizes();
  }

  /** Kinds to choose from. */
  public Map<String, String> kinds() {
    return RollForm.kinds();
  }
}
