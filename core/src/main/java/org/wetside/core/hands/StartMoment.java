package org.wetside.core.hands;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.wetside.core.run.RunState;

/** Finds the moment at which a run that is ready can be begun without two tanks wanting hands. */
public final class StartMoment {
  /** A start moment is worth little if a few seconds of delay spoil it. */
  private static final int STEADY_S = 10;

  private static final int SHOWN_S = 60;

  private final String tank;
  private final RunState ready;
  private final List<AttentionWindow> others;
  private final int lastFixed;

  private StartMoment(String tank, RunState ready, List<AttentionWindow> others) {
    this.tank = tank;
    this.ready = ready;
    this.others = others;
    int open = 0;
    while (open + 1 < ready.steps().size() && ready.canStillAdd(open).isZero()) {
      open++;
    }
    this.lastFixed = open;
  }

  /**
   * The earliest moment that holds for some seconds, not before {@code now}; at the latest after
   * the last window of the others.
   *
   * @param tank its tank
   * @param ready a run that is ready
   * @param others when the runs under way want the hands
   */
  public static StartAdvice of(
      String tank, RunState ready, List<AttentionWindow> others, Instant now) {
    return new StartMoment(tank, ready, Attention.after(now.minus(AttentionWindow.APART), others))
        .search(now);
  }

  private StartAdvice search(Instant now) {
    Instant first = now.truncatedTo(ChronoUnit.SECONDS);
    first = first.isBefore(now) ? first.plusSeconds(1) : first;
    List<Clash> ifNow = FreeHands.of(tank, ready, others, now, now).clashes();
    Instant last = lastOf(first);
    Instant from = first;
    Instant at = first;
    for (; at.isBefore(last); at = at.plusSeconds(1)) {
      if (!clear(at)) {
        from = at.plusSeconds(1);
      } else if (!at.isBefore(from.plusSeconds(STEADY_S))) {
        break;
      }
    }
    Repair repair = FreeHands.of(tank, ready, others, from, from);
    return new StartAdvice(from, untilOf(from), repair.moves(), ifNow);
  }

  /** After it nothing of the others is left to clash with. */
  private Instant lastOf(Instant first) {
    return others.stream()
        .map(AttentionWindow::to)
        .max(Instant::compareTo)
        .map(end -> end.plus(AttentionWindow.APART).plusSeconds(1))
        .filter(first::isBefore)
        .orElse(first);
  }

  private Instant untilOf(Instant from) {
    Instant until = from;
    while (Duration.between(from, until).toSeconds() < SHOWN_S && clear(until.plusSeconds(1))) {
      until = until.plusSeconds(1);
    }
    return until;
  }

  private boolean clear(Instant start) {
    return fixedPartIsClear(start)
        && FreeHands.of(tank, ready, others, start, start).clashes().isEmpty();
  }

  /** What cannot be moved decides most starts, quickly. */
  private boolean fixedPartIsClear(Instant start) {
    List<AttentionWindow> fixed =
        Attention.of(tank, ready, start).stream()
            .filter(window -> window.step() < lastFixed || isBeforeItsDrain(window))
            .toList();
    return Clash.between(fixed, Attention.after(start.minus(AttentionWindow.APART), others))
        .isEmpty();
  }

  private boolean isBeforeItsDrain(AttentionWindow window) {
    boolean movable = !ready.canStillAdd(lastFixed).isZero();
    return window.step() == lastFixed && (!movable || window.want() == Want.POUR);
  }
}
