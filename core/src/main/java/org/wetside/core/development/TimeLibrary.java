package org.wetside.core.development;

import java.util.List;
import java.util.function.Supplier;

/**
 * What an estimate may draw on.
 *
 * @param answerable entries that may be the start of an answer
 * @param evidence all entries, for slopes and ratios; asked for only when a step needs them
 */
public record TimeLibrary(List<TimeEntry> answerable, Supplier<List<TimeEntry>> evidence) {
  public TimeLibrary {
    answerable = List.copyOf(answerable);
  }
}
