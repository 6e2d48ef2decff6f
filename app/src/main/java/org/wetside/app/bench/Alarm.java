package org.wetside.app.bench;

import java.time.Instant;

/** Rings once at a moment. A seam: a test rings by hand, the server by a thread. */
public interface Alarm extends AutoCloseable {
  /** Rings at that moment in place of any earlier wish; at once when it is past. */
  void set(Instant when, Runnable ring);

  /** Rings no more. */
  @Override
  void close();
}
