package org.wetside.web.testroll;

/**
 * One step on the page of a test roll.
 *
 * @param step its short name
 * @param title it in few words
 * @param text what is done
 * @param when it was ticked; empty when it was not
 * @param note said with it; empty for none
 * @param really what was really done, where that may differ; empty otherwise
 * @param isNext whether it is the first that is not ticked
 */
public record StepLine(
    String step,
    String title,
    String text,
    String when,
    String note,
    String really,
    boolean isNext) {
  /** Whether it was ticked. */
  public boolean isDone() {
    return !when.isEmpty();
  }
}
