package org.wetside.web.testroll;

import java.util.List;
import org.wetside.web.paper.PlainPage;

/** The test roll as plain text, for a terminal or a plain printer. */
public final class TestRollText {

  private final PlainPage page = new PlainPage();

  private TestRollText() {}

  /** The whole plan. */
  public static String of(TestRollView view) {
    TestRollHead head = TestRollHead.of(view);
    TestRollText paper = new TestRollText();
    paper.page.wrapped("", "Test roll: " + head.title());
    paper.page.wrapped("", head.recipe());
    paper.table(view, head);
    String part = "";
    for (TestRollView.TestStepView step : view.steps()) {
      if (!step.part().equals(part)) {
        part = step.part();
        paper.page.heading(part);
      }
      paper.page.wrapped("[ ] ", step.text());
    }
    paper.page.heading("How sure");
    view.notes().forEach(note -> paper.page.wrapped("", note));
    return paper.page.toString();
  }

  private void table(TestRollView view, TestRollHead head) {
    page.heading("The roll, frame by frame");
    page.line(
        PlainPage.padded("stops", 7)
            + PlainPage.padded("set", 19)
            + PlainPage.padded(head.logHWord(), 16)
            + "frames");
    for (SeriesRow row : SeriesRow.of(view)) {
      page.line(
          PlainPage.padded(row.mark(), 7)
              + PlainPage.padded(row.setting(), 19)
              + PlainPage.padded(row.logH(), 16)
              + frames(row.frames()));
    }
  }

  private static String frames(List<Integer> frames) {
    StringBuilder all = new StringBuilder();
    frames.forEach(frame -> all.append("[ ] ").append(PlainPage.padded(String.valueOf(frame), 4)));
    return all.toString();
  }
}
