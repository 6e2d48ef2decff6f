package org.wetside.core.hands;

import java.time.Instant;
import java.util.List;

/** When other runs want the hands, ready to be counted quickly. */
final class BusyHands {
  private final long[] from;
  private final long[] to;
  private final long nowMs;

  BusyHands(List<AttentionWindow> windows, Instant now) {
    long apart = AttentionWindow.APART.toMillis();
    from = windows.stream().mapToLong(one -> one.from().toEpochMilli() - apart).toArray();
    to = windows.stream().mapToLong(one -> one.to().toEpochMilli() + apart).toArray();
    nowMs = now.toEpochMilli();
  }

  /** With how many of them a window clashes; one that is over clashes no more. */
  int clashes(long fromMs, long toMs) {
    if (toMs <= nowMs) {
      return 0;
    }
    int count = 0;
    for (int i = 0; i < from.length; i++) {
      if (fromMs < to[i] && from[i] < toMs) {
        count++;
      }
    }
    return count;
  }
}
