package org.wetside.web.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the start page.
 *
 * @param sheet the sheet
 * @param say the opening sentence
 * @param tonight what there is, in words
 * @param asked the form that says what there is
 * @param line the form for a roll in one line
 * @param wide the strip on a wide sheet; null when nothing is on it
 * @param narrow the strip on a narrow sheet
 * @param loads the loads in order
 * @param attention what wants attention
 * @param waiting rolls that wait, longest first
 * @param missing what a first evening still needs, in sentences
 */
public record PlanPage(
    Sheet sheet,
    Say say,
    TonightWords tonight,
    FilledForm asked,
    FilledForm line,
    @Nullable EveningDrawing wide,
    @Nullable EveningDrawing narrow,
    List<LoadLine> loads,
    List<Attention> attention,
    List<Waiting> waiting,
    List<Missing> missing) {

  /** A sentence with a part that changes. */
  public record Say(String before, String bold, String after) {}

  /** What there is tonight, in words; empty where it was not said. */
  public record TonightWords(String day, String kitchen, String waters, String limit) {}

  /**
   * Something to look at.
   *
   * @param flag a word
   * @param solid whether it is a danger rather than a doubt
   * @param text what it is
   * @param link where to go; empty for nowhere
   * @param linkWords what the link says
   */
  public record Attention(String flag, boolean solid, String text, String link, String linkWords) {}

  /** A roll that waits. */
  public record Waiting(String number, String film, String title, String age) {}

  /** A step of a first evening. */
  public record Missing(String strong, String rest, String link) {}
}
