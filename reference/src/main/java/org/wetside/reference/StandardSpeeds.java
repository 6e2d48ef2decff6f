package org.wetside.reference;

import org.wetside.core.sensitometry.SpeedScale;
import org.wetside.core.sensitometry.SpeedStep;

/** The standard film speeds on file, computed with a rule that is recalled. */
public final class StandardSpeeds {
  private StandardSpeeds() {}

  /** Reads the file. */
  public static SpeedScale open() {
    return new SpeedScale(
        ReferenceTable.open("curves/speed_steps").rows().stream()
            .map(
                row ->
                    new SpeedStep(
                        row.number("iso"),
                        (int) row.number("degrees"),
                        row.number("rounded_from"),
                        row.number("rounded_to")))
            .toList());
  }
}
