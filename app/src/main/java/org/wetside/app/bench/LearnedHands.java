package org.wetside.app.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.wetside.core.run.Hands;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/** How long pouring and draining take with a tank, from the runs it has done. */
final class LearnedHands {
  /** So many runs back; older ones tell more about the past than about the hands. */
  private static final int RUNS = 20;

  private LearnedHands() {}

  static Hands with(Session session, String tank) {
    Runs runs = new Runs(session);
    List<Long> oldestFirst = new ArrayList<>(runs.startedIn(tank, RUNS));
    Collections.reverse(oldestFirst);
    Hands hands = Hands.unknown();
    for (long run : oldestFirst) {
      hands = hands.and(runs.state(run, List.of()));
    }
    return hands;
  }
}
