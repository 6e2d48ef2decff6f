package org.wetside.app.keeping;

import java.util.List;
import org.wetside.store.LedgerCheck;
import org.wetside.store.Session;

/** Every bottle against its ledger, those that left the shelf included. */
final class BottleBooks {
  private final LedgerCheck ledgers;
  private final List<Fault> faults;
  private int bottles;

  BottleBooks(Session session, List<Fault> faults) {
    ledgers = new LedgerCheck(session);
    this.faults = faults;
  }

  int bottles() {
    return bottles;
  }

  void check() {
    Reading.of(
        "bottles",
        faults,
        () -> {
          for (long id : ledgers.bottles()) {
            Reading.of("bottle number " + id, faults, () -> check(id));
          }
        });
  }

  private void check(long id) {
    bottles++;
    for (String complaint : ledgers.complaints(id)) {
      int colon = complaint.indexOf(": ");
      faults.add(new Fault(complaint.substring(0, colon), complaint.substring(colon + 2)));
    }
  }
}
