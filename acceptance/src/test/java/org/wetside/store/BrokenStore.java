package org.wetside.store;

/** Knows who asks. */
final class BrokenStore {
  private BrokenStore() {}

  static Object asker(org.wetside.app.Wetside wetside) {
    return wetside.home();
  }
}
