package org.wetside.web.times;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The user's own times, or what was just kept.
 *
 * @param own the times in use; empty after keeping
 * @param kept what was kept; null when they were only listed
 * @param csv the file to give out; null when none was asked for
 */
public record TimesView(List<OwnTimeView> own, @Nullable KeptView kept, @Nullable String csv) {
  /** A list. */
  public static TimesView listed(List<OwnTimeView> own) {
    return new TimesView(own, null, null);
  }

  /** What was kept. */
  public static TimesView kept(KeptView kept) {
    return new TimesView(List.of(), kept, null);
  }

  /** The list with the file. */
  public TimesView withCsv(String text) {
    return new TimesView(own, kept, text);
  }
}
