package org.wetside.core.process;

import java.time.Duration;
import java.util.Locale;

/** How times are written and spoken in cues. */
final class Words {
  private Words() {}

  /** {@code 30 s}, {@code 2.5 s}. */
  static String seconds(Duration time) {
    long millis = time.toMillis();
    return millis % 1000 == 0
        ? millis / 1000 + " s"
        : String.format(Locale.ROOT, "%.1f s", millis / 1000.0);
  }

  /** {@code 8:45}. */
  static String clock(Duration time) {
    long seconds = Math.round(time.toMillis() / 1000.0);
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
