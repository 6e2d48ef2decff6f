package org.wetside.reference;

/** Knows a home. */
final class BrokenReference {
  private BrokenReference() {}

  static void close(org.wetside.store.Database database) {
    database.close();
  }
}
