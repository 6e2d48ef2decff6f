package org.wetside.core.quantity;

import java.io.File;
import java.time.Clock;

/** Reads a file and a clock, and starts a thread. */
final class BrokenCore {
  private BrokenCore() {}

  static Thread started(File file) {
    return new Thread(() -> file.setLastModified(Clock.systemUTC().millis()));
  }
}
