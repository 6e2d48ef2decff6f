package org.wetside.core.instrument;

import org.wetside.core.quantity.BadValueException;

/** Names that people give: short enough for a line, free of what an address cannot hold. */
final class ThingName {
  private static final int LONGEST = 40;

  private ThingName() {}

  static String require(String name, String thing) {
    String bare = name.strip();
    if (bare.isEmpty() || bare.length() > LONGEST) {
      throw new BadValueException(thing, name, "1 to " + LONGEST + " characters");
    }
    if (bare.chars().anyMatch(one -> Character.isISOControl(one) || one == '/' || one == '\\')) {
      throw new BadValueException(thing, bare, "without line ends, / and \\");
    }
    return bare;
  }

  /** A label stands in a line of cells with commas between. */
  static String requireLabel(String label, String thing) {
    String bare = require(label, thing);
    if (bare.indexOf(',') >= 0 || bare.indexOf(';') >= 0 || bare.startsWith("#")) {
      throw new BadValueException(
          thing, bare, "without commas and semicolons, not beginning with #");
    }
    return bare;
  }
}
