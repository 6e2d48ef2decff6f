package org.wetside.core.instrument;

/**
 * A densitometer, or a scanner or camera that is used as one.
 *
 * @param name what it is called, 1 to 40 characters
 * @param kind how it sees
 * @param note how it must be set to read the same again; may be empty
 */
public record Instrument(String name, InstrumentKind kind, String note) {
  /** Takes blanks around the words away. */
  public Instrument {
    name = ThingName.require(name, "name of the instrument");
    note = note.strip();
  }
}
