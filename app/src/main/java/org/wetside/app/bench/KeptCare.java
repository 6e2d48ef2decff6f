package org.wetside.app.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.wetside.app.care.BathCare;
import org.wetside.app.care.CareForSteps;
import org.wetside.core.run.Phase;
import org.wetside.store.Database;

/**
 * What is said of the baths of runs that go on. Until the first pour another bottle may be put
 * under a letter, so it is asked for anew; from then on it stays as it was found.
 */
final class KeptCare {
  private final Supplier<Database> database;
  private final Map<Long, List<BathCare>> kept = new HashMap<>();

  KeptCare(Supplier<Database> database) {
    this.database = database;
  }

  List<BathCare> of(LiveRun run) {
    long id = run.card().id();
    Phase phase = run.state().phase();
    if (phase.over() || phase == Phase.READY) {
      kept.remove(id);
    }
    if (phase.over()) {
      return List.of();
    }
    return kept.computeIfAbsent(
        id,
        unused ->
            new CareForSteps(database).of(run.state().plan().steps(), run.card().developer()));
  }
}
