package org.wetside.web.density;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.instrument.InstrumentKind;
import org.wetside.core.instrument.StepTablet;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of all instruments.
 *
 * @param sheet the sheet
 * @param instruments by name
 * @param tablets by name
 * @param form an instrument as it was typed
 */
public record InstrumentsPage(
    Sheet sheet, List<InstrumentView> instruments, List<StepTablet> tablets, FilledForm form) {
  /** Kinds to choose from. */
  public Map<String, String> kinds() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(InstrumentKind.SCANNER.word(), "scanner");
    words.put(InstrumentKind.CAMERA.word(), "camera over a light table");
    words.put(InstrumentKind.DENSITOMETER.word(), "densitometer");
    return words;
  }

  /** How many were never calibrated. */
  public long uncalibrated() {
    return instruments.stream().filter(one -> one.newest() == null).count();
  }

  /** Where a tablet is. */
  public static String path(StepTablet tablet) {
    return DensityAddress.tablet(tablet.name());
  }

  /** Span of a tablet in words. */
  public static String span(StepTablet tablet) {
    return tablet.steps().get(0).density().value()
        + " to "
        + tablet.steps().get(tablet.steps().size() - 1).density().value();
  }
}
