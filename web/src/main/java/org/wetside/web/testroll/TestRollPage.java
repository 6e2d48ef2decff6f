package org.wetside.web.testroll;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one test roll.
 *
 * @param sheet the sheet
 * @param kept the roll and how far it has come
 * @param view its plan
 * @param head what stands above
 * @param rows the table to expose by
 * @param steps what is done, in its order
 * @param form of the step that is next
 * @param cautions of the developer; empty unless a piece is developed next
 * @param wide the roll for a wide sheet
 * @param narrow the same for a narrow one
 */
public record TestRollPage(
    Sheet sheet,
    KeptTestRoll kept,
    TestRollView view,
    TestRollHead head,
    List<SeriesRow> rows,
    List<StepLine> steps,
    FilledForm form,
    List<CautionView> cautions,
    RollDrawing wide,
    RollDrawing narrow) {
  /** Keeps unmodifiable copies. */
  public TestRollPage {
    rows = List.copyOf(rows);
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
  }

  /** Address of the roll. */
  public String path() {
    return TestRollAddress.of(kept);
  }

  /** The step that is next; null when all is done. */
  public @Nullable StepLine next() {
    return steps.stream().filter(StepLine::isNext).findFirst().orElse(null);
  }

  /** How many steps were ticked. */
  public long done() {
    return steps.stream().filter(StepLine::isDone).count();
  }

  /** The piece that is developed next; 0 when none is. */
  public int developing() {
    return pieceOf(TestStep.Part.DEVELOP);
  }

  /** The piece that is read next; 0 when none is. */
  public int reading() {
    return pieceOf(TestStep.Part.READ);
  }

  private int pieceOf(TestStep.Part part) {
    Optional<TestStep> next = kept.next();
    return next.isPresent() && next.get().part() == part ? next.get().piece() : 0;
  }

  /** Address of the page on which a piece is read. */
  public String readPath(int piece) {
    return TestRollAddress.of(kept, piece);
  }

  /** Where the curves are read together; empty while there are fewer than two. */
  public String familyPath() {
    List<Long> curves = kept.curveNumbers();
    if (curves.size() < 2) {
      return "";
    }
    StringBuilder path = new StringBuilder("/curves/family?");
    curves.forEach(curve -> path.append("strip=").append(curve).append('&'));
    return path.substring(0, path.length() - 1);
  }

  /** Whether the roll can be planned anew. */
  public boolean isOpen() {
    return !kept.isExposed();
  }
}
