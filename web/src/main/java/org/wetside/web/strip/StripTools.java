package org.wetside.web.strip;

import java.util.LinkedHashMap;
import java.util.Map;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.KnownInstrument;
import org.wetside.core.instrument.StepTablet;
import org.wetside.web.density.Claim;
import org.wetside.web.page.FilledForm;

/**
 * What a strip may have been exposed and read with, as choices.
 *
 * @param tablets by name; with "none" first
 * @param instruments likewise, those that can be believed: densitometers, and what is calibrated
 */
public record StripTools(Map<String, String> tablets, Map<String, String> instruments) {
  /** What can be chosen in a form, and what was chosen in it before. */
  public static StripTools of(Densitometry densitometry, FilledForm form) {
    Map<String, String> tablets = new LinkedHashMap<>();
    tablets.put("", "none: its densities are typed");
    for (StepTablet tablet : densitometry.keepTablets().all()) {
      tablets.put(tablet.name(), tablet.name() + ", " + tablet.steps().size() + " steps");
    }
    Map<String, String> instruments = new LinkedHashMap<>();
    instruments.put("", "not said");
    for (KnownInstrument known : densitometry.keepInstruments().all()) {
      boolean pixels = known.instrument().kind().seesPixels();
      if (!pixels || known.newest().isPresent()) {
        instruments.put(
            known.instrument().name(),
            known.instrument().name()
                + (pixels
                    ? ", to density "
                        + Claim.density(known.newest().orElseThrow().scale().densest())
                    : ", " + known.instrument().kind().word()));
      }
    }
    keepChosen(tablets, form.value("keptTablet"));
    keepChosen(instruments, form.value("instrument"));
    return new StripTools(tablets, instruments);
  }

  /** What a strip was made with and cannot be chosen any more is not dropped without a word. */
  private static void keepChosen(Map<String, String> words, String name) {
    words.putIfAbsent(name, name + ", cannot be chosen");
  }

  /** Whether any tablet is written down. */
  public boolean hasTablets() {
    return tablets.size() > 1;
  }

  /** Whether any instrument can be chosen. */
  public boolean hasInstruments() {
    return instruments.size() > 1;
  }
}
