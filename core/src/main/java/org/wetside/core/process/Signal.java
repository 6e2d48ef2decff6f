package org.wetside.core.process;

import java.util.List;

/**
 * What an act looks and feels like without sound.
 *
 * @param flash whether the whole sheet changes its ground
 * @param milliseconds how long it stays changed; at least 1000 when it does, so that there are
 *     never more than two changes a second (WCAG 2.2, 2.3.1)
 * @param vibrateMilliseconds on, off, on …
 */
public record Signal(boolean flash, int milliseconds, List<Integer> vibrateMilliseconds) {
  public Signal {
    if (flash && milliseconds < 1000) {
      throw new IllegalArgumentException("a flash lasts at least 1000 ms: " + milliseconds);
    }
    vibrateMilliseconds = List.copyOf(vibrateMilliseconds);
  }
}
