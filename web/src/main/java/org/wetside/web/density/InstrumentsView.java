package org.wetside.web.density;

import java.util.List;
import org.wetside.app.density.KeepInstruments;

/**
 * The instruments that read density.
 *
 * @param instruments by name
 */
public record InstrumentsView(List<InstrumentView> instruments) {
  /** All of a home. */
  public static InstrumentsView of(KeepInstruments instruments) {
    return new InstrumentsView(instruments.all().stream().map(InstrumentView::of).toList());
  }
}
