package org.wetside.app.bench;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/**
 * A run as the conductor holds it: what was stored, folded.
 *
 * @param card its head
 * @param state the fold over its events
 * @param taken for each step what its bottle gives
 */
record LiveRun(RunCard card, RunState state, List<Optional<Volume>> taken) {
  static Optional<LiveRun> load(Session session, long id) {
    Runs runs = new Runs(session);
    return runs.find(id).map(card -> new LiveRun(card, runs.state(id, List.of()), runs.taken(id)));
  }

  /** The same, with these checks to be answered before the first pour. */
  LiveRun asking(List<String> checks) {
    return new LiveRun(card, state.asking(checks), taken);
  }

  LiveRun after(RunEvent event) {
    return new LiveRun(card, state.after(event), taken);
  }
}
