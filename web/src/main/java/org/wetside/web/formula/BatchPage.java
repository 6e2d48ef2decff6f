package org.wetside.web.formula;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.HowTo;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of a batch that is mixed step by step.
 *
 * @param sheet the sheet
 * @param batch the batch
 * @param form what was typed and refused
 * @param baths kinds of bath for the bottle
 * @param roles roles for the bottle
 */
public record BatchPage(
    Sheet sheet,
    BatchView batch,
    FilledForm form,
    Map<String, String> baths,
    Map<String, String> roles) {

  /** The step that is next; empty when all are done. */
  public Optional<BatchStepView> next() {
    return batch.steps().stream().filter(step -> step.doneAt() == null).findFirst();
  }

  /** The steps behind and before the next one. */
  public List<BatchStepView> steps() {
    return batch.steps();
  }

  /** How much was planned, in the reader's units. */
  public String planned(BatchStepView step) {
    return amount(step.grams(), step.volumeMl());
  }

  /** How much really went in. */
  public String really(BatchStepView step) {
    return amount(step.weighedGrams(), step.measuredMl());
  }

  /** How far off that is; empty when it is what was planned. */
  public String off(BatchStepView step) {
    Double percent = step.offPercent();
    return percent == null || Math.abs(percent) < 0.05
        ? ""
        : String.format(Locale.ROOT, "%+.1f %%", percent);
  }

  /** What the field for the amount is called. */
  public String label(BatchStepView step) {
    return step.grams() != null ? "really weighed, g" : "really measured, " + sheet.volumeSign();
  }

  private String amount(@Nullable Double grams, @Nullable Double millilitres) {
    Units units = sheet.units();
    if (grams != null) {
      return HowTo.grams(grams);
    }
    return millilitres == null ? "" : units.words(Volume.ofMillilitres(millilitres));
  }
}
