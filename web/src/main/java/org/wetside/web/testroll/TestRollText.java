package org.wetside.web.testroll;

import java.util.List;

/** The test roll as plain text, for a terminal or a plain printer. */
public final class TestRollText {
  private static final int WIDTH = 78;

  private final StringBuilder text = new StringBuilder();

  private TestRollText() {}

  /** The whole plan. */
  public static String of(TestRollView view) {
    TestRollHead head = TestRollHead.of(view);
    TestRollText paper = new TestRollText();
    paper.wrapped("", "Test roll: " + head.title());
    paper.wrapped("", head.recipe());
    paper.table(view, head);
    String part = "";
    for (TestRollView.TestStepView step : view.steps()) {
      if (!step.part().equals(part)) {
        part = step.part();
        paper.heading(part);
      }
      paper.wrapped("[ ] ", step.text());
    }
    paper.heading("How sure");
    view.notes().forEach(note -> paper.wrapped("", note));
    return paper.text.toString();
  }

  private void table(TestRollView view, TestRollHead head) {
    heading("The roll, frame by frame");
    line(padded("stops", 7) + padded("set", 19) + padded(head.logHWord(), 16) + "frames");
    for (SeriesRow row : SeriesRow.of(view)) {
      line(
          padded(row.mark(), 7)
              + padded(row.setting(), 19)
              + padded(row.logH(), 16)
              + frames(row.frames()));
    }
  }

  private static String frames(List<Integer> frames) {
    StringBuilder all = new StringBuilder();
    frames.forEach(frame -> all.append("[ ] ").append(padded(String.valueOf(frame), 4)));
    return all.toString();
  }

  private void heading(String words) {
    line("");
    line(words);
    line("-".repeat(words.length()));
  }

  private void line(String words) {
    text.append(words.stripTrailing()).append('\n');
  }

  /** Broken at spaces; what follows stands under the first word. */
  private void wrapped(String before, String words) {
    StringBuilder line = new StringBuilder(before);
    boolean fresh = true;
    for (String word : words.split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(" ".repeat(before.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(line.toString());
  }

  private static String padded(String words, int width) {
    return words + " ".repeat(Math.max(1, width - words.length()));
  }
}
