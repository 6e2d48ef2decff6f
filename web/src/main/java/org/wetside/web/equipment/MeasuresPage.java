package org.wetside.web.equipment;

import java.util.List;
import java.util.Optional;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page about the balance and the measures of the house.
 *
 * @param sheet the sheet
 * @param balance what it shows, in words; empty when nobody has said
 * @param measures the smallest first
 * @param balanceForm the balance as it was typed
 * @param measureForm a measure as it was typed
 */
public record MeasuresPage(
    Sheet sheet,
    Optional<String> balance,
    List<Line> measures,
    FilledForm balanceForm,
    FilledForm measureForm) {
  /**
   * A syringe or graduate in words.
   *
   * @param name as it is called at the sink
   * @param holds up to its last mark
   * @param division between two marks
   * @param error half a division
   */
  public record Line(String name, String holds, String division, String error) {}

  /** Whether one of the forms was refused. */
  public boolean refused() {
    return balanceForm.isRefused() || measureForm.isRefused();
  }
}
