package org.wetside.core.run;

import org.wetside.core.quantity.BadValueException;

/**
 * A check before the first pour that was left undone.
 *
 * @param id of the check: letters, digits and dashes
 * @param text the check in the words it was asked in; empty while only its id was sent
 */
public record PassedOver(String id, String text) {
  public PassedOver {
    if (!id.matches("[A-Za-z0-9-]{1,60}")) {
      throw new BadValueException("check", id, "1 to 60 letters, digits and dashes");
    }
    text = text.replaceAll("\\s+", " ").strip();
  }
}
