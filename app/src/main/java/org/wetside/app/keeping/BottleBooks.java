package org.wetside.app.keeping;

import java.util.List;
import org.wetside.store.Session;

/** Every bottle against its book: the state that is stored is the fold over its lines. */
final class BottleBooks {
  private final Session session;
  private final List<Fault> faults;
  private int bottles;

  BottleBooks(Session session, List<Fault> faults) {
    this.session = session;
    this.faults = faults;
  }

  int bottles() {
    return bottles;
  }

  void check() {
    Reading.of(
        "bottles",
        faults,
        () -> bottles += new org.wetside.store.Bottles(session).onShelf().size());
  }
}
