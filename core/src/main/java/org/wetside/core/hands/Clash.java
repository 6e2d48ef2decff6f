package org.wetside.core.hands;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two tanks want the hands within {@link AttentionWindow#APART} of each other.
 *
 * @param one a window of the first run
 * @param other a window of the second
 */
public record Clash(AttentionWindow one, AttentionWindow other) {
  /** All clashes of two runs, the earliest first. */
  public static List<Clash> between(List<AttentionWindow> ones, List<AttentionWindow> others) {
    List<Clash> clashes = new ArrayList<>();
    for (AttentionWindow one : ones) {
      for (AttentionWindow other : others) {
        if (one.clashesWith(other)) {
          clashes.add(new Clash(one, other));
        }
      }
    }
    clashes.sort(Comparator.comparing(Clash::at));
    return clashes;
  }

  /** When the first of the two is wanted. */
  public Instant at() {
    return one.from().isBefore(other.from()) ? one.from() : other.from();
  }
}
