package org.wetside.core.testroll;

import java.util.List;
import java.util.OptionalInt;

/**
 * What is engraved on a dial, in thirds of a stop from its first mark. The marks are rounded by
 * custom; the place on the scale is exact.
 */
final class StopScale {
  private final List<String> marks;

  StopScale(String... marks) {
    this.marks = List.of(marks);
  }

  int last() {
    return marks.size() - 1;
  }

  String mark(int thirds) {
    return marks.get(thirds);
  }

  boolean holds(int thirds) {
    return thirds >= 0 && thirds <= last();
  }

  /** How many thirds from the first mark; empty for what is on no dial. */
  OptionalInt thirds(String mark) {
    int place = marks.indexOf(mark);
    return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
  }
}
