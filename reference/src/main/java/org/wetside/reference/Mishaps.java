package org.wetside.reference;

import java.util.List;
import org.wetside.core.run.MishapAdvice;

/** What can happen at the sink, with advice for the first minute: the file of mishaps. */
public final class Mishaps {
  private Mishaps() {}

  /** All of them, in the order of the file. */
  public static List<MishapAdvice> all() {
    return ReferenceTable.open("negatives/mishaps").rows().stream()
        .map(
            row ->
                new MishapAdvice(
                    row.text("mishap"),
                    row.text("first_minute"),
                    row.text("afterwards"),
                    row.standing(),
                    row.citation()))
        .toList();
  }
}
