package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.InstrumentKind;

/**
 * An instrument as it is described.
 *
 * @param name what it is called
 * @param kind {@code densitometer}, {@code scanner} or {@code camera}
 * @param note how it must be set to read the same again
 */
public record InstrumentBody(@Nullable String name, @Nullable String kind, @Nullable String note) {
  /**
   * The instrument.
   *
   * @throws org.wetside.core.quantity.BadValueException naming the part and its limit
   */
  public Instrument described() {
    return new Instrument(
        name == null ? "" : name,
        InstrumentKind.fromWord(kind == null ? "" : kind),
        note == null ? "" : note);
  }
}
