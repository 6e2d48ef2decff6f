package org.wetside.web;

/** Reaches through to the store, and knows the terminal. */
final class BrokenPage {
  private BrokenPage() {}

  static String shows(org.wetside.store.Database database) {
    return database.getClass().getName() + org.wetside.cli.Main.class.getName();
  }
}
