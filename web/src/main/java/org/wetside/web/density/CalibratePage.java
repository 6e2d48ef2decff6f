package org.wetside.web.density;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.instrument.Instrument;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of a new calibration.
 *
 * @param sheet the sheet
 * @param instrument to be calibrated
 * @param tablets names to choose from
 * @param form as it was typed
 */
public record CalibratePage(
    Sheet sheet, Instrument instrument, List<String> tablets, FilledForm form) {
  /** Tablets to choose from. */
  public Map<String, String> tabletWords() {
    Map<String, String> words = new LinkedHashMap<>();
    tablets.forEach(name -> words.put(name, name));
    return words;
  }

  /** Methods to choose from. */
  public Map<String, String> methods() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("formula", "formula of three parameters, from 4 steps");
    words.put("table", "table through the steps, from 10 steps");
    return words;
  }

  /** Where it goes. */
  public String path() {
    return back() + "/calibrate";
  }

  /** Where it came from. */
  public String back() {
    return DensityAddress.instrument(instrument.name());
  }
}
