package org.wetside.web.testroll;

import java.util.Map;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.strip.StripFormPage;

/**
 * Model of the form by which a test roll is planned.
 *
 * @param sheet the sheet
 * @param form as it is typed
 * @param path where it is sent
 * @param back where one comes from
 * @param isNew whether no such roll is on file yet
 */
public record TestRollFormPage(
    Sheet sheet, FilledForm form, String path, String back, boolean isNew) {
  /** What the pieces may be developed in. */
  public Map<String, String> vessels() {
    return StripFormPage.vesselWords();
  }
}
