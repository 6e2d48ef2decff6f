package org.wetside.app.keeping;

import java.util.List;

/** Reads one thing; what cannot be read becomes a fault, so that the check goes on. */
final class Reading {
  private Reading() {}

  /** Whatever a gateway or a type of the core throws, it means that the row is not what it was. */
  static void of(String where, List<Fault> faults, Runnable act) {
    try {
      act.run();
    } catch (RuntimeException unreadable) {
      faults.add(new Fault(where, "cannot be read: " + unreadable.getMessage()));
    }
  }
}
