package org.wetside.app.keeping;

import java.nio.file.Path;
import java.util.List;

/**
 * What a check looked at and found.
 *
 * @param file the database
 * @param version of its tables
 * @param older whether it is of an older version, so that a copy of it was brought up to date and
 *     checked in its place
 * @param runs how many runs were folded
 * @param events how many events that were
 * @param bottles how many bottles' books were folded
 * @param rolls how many rolls were read
 * @param faults what is wrong; empty when nothing is
 */
public record Findings(
    Path file,
    int version,
    boolean older,
    int runs,
    long events,
    int bottles,
    int rolls,
    List<Fault> faults) {
  /** Keeps an unmodifiable copy. */
  public Findings {
    faults = List.copyOf(faults);
  }

  /** Whether nothing is wrong. */
  public boolean clean() {
    return faults.isEmpty();
  }

  Findings of(Path original, int found) {
    return new Findings(
        original, found, found != version || older, runs, events, bottles, rolls, faults);
  }
}
