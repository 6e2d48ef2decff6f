package org.wetside.web.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.run.RollInTank;

/** One run in a list. */
public record RunLineView(
    long run,
    @Nullable Long load,
    String name,
    String tank,
    List<String> rolls,
    String phase,
    @Nullable String startedAt,
    String endsAt) {

  static RunLineView of(BenchSnapshot at) {
    return new RunLineView(
        at.card().id(),
        at.card().load().orElse(null),
        at.card().name(),
        at.card().tank(),
        at.card().rolls().stream().map(RollInTank::number).toList(),
        at.state().phase().word(),
        Instants.textOrNull(at.state().startedAt()),
        Instants.text(at.endsAt()));
  }
}
