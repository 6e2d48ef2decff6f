package org.wetside.web.plan;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page that makes or changes a load.
 *
 * @param sheet the sheet
 * @param id the load that is changed; null for a new one
 * @param form what was typed
 * @param rolls rolls that may be ticked
 * @param tanks the tanks by name
 * @param processes the processes by short name
 * @param bottles for each bath the bottles to choose from, under the name of its field
 * @param prepared what the wish comes to; null before anything was asked
 */
public record LoadFormPage(
    Sheet sheet,
    @Nullable Long id,
    FilledForm form,
    List<Tick> rolls,
    Map<String, String> tanks,
    Map<String, String> processes,
    List<BottleChoice> bottles,
    @Nullable PreparedPart prepared) {

  /** A roll to tick. */
  public record Tick(String number, String film, String title, boolean ticked) {}

  /** Bottles for a bath. */
  public record BottleChoice(String field, String word, Map<String, String> letters) {}
}
