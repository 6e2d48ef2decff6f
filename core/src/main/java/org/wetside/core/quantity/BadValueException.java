package org.wetside.core.quantity;

/**
 * A value that cannot be accepted: the message names the thing, the value as given with its unit,
 * and the limit or the form that would be accepted. Shown to the person as it is, so it is written
 * as a sentence.
 */
public final class BadValueException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String thing;

  /**
   * @param thing what was being given, in the trade's words, for example {@code "bath temperature"}
   * @param given the value as it was given, with its unit if it had one
   * @param limit what would be accepted, for example {@code "between -5 and 60 °C"}
   */
  public BadValueException(String thing, String given, String limit) {
    super(thing + " \"" + given + "\" is refused: " + limit);
    this.thing = thing;
  }

  /** What was being given; lets a form put the message beside its field. */
  public String thing() {
    return thing;
  }
}
