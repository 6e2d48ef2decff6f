package org.wetside.web.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.UndoRules;

/** What is left to do when all has passed the line. */
public record AfterView(
    List<String> hang,
    String hungAt,
    String doNotTouchUntil,
    double totalSeconds,
    String undoUntil,
    boolean recordComplete) {
  /** Film in still household air is dry to the touch by then (common practice). */
  private static final Duration DRYING = Duration.ofHours(3);

  static @Nullable AfterView of(BenchSnapshot at) {
    if (at.state().phase() != Phase.FINISHED) {
      return null;
    }
    Instant hung = at.endsAt();
    return new AfterView(
        hang(at),
        Instants.text(hung),
        Instants.text(hung.plus(DRYING)),
        TimeSpan.toSeconds(Duration.between(at.moments().start(), hung)),
        Instants.text(hung.plus(UndoRules.WITHIN)),
        true);
  }

  /** The top reel comes out first. */
  static List<String> hang(BenchSnapshot at) {
    List<RollInTank> rolls = at.card().rolls();
    List<String> order = new ArrayList<>();
    for (int i = rolls.size() - 1; i >= 0; i--) {
      String side = rolls.size() == 2 ? (i == 1 ? " left" : " right") : "";
      order.add(rolls.get(i).number() + side);
    }
    return order;
  }
}
