package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The cues along a timeline, in the order in which they are due. */
public final class CueSheet {
  private static final Duration FIRST_READY = Duration.ofSeconds(30);
  private static final Duration AFTER_FULL = Duration.ofSeconds(4);
  private static final Duration FIRST_CAP = Duration.ofSeconds(5);

  private CueSheet() {}

  /**
   * All cues of a run.
   *
   * @param steps at their places, planned or as they happened
   * @param tank name of the tank, said in every cue where several are at work; empty when there is
   *     only one
   */
  public static List<Cue> along(List<PlacedStep> steps, String tank) {
    List<Cue> cues = new ArrayList<>();
    boolean lid = steps.stream().noneMatch(CueSheet::inTray);
    for (PlacedStep step : steps) {
      StepCues along = new StepCues(step, tank, lid);
      if (step.index() == 0) {
        beforeFirst(step, along);
      }
      along.addDuring();
      cues.addAll(along.cues());
      if (step.index() + 1 < steps.size()) {
        cues.addAll(towards(step, steps.get(step.index() + 1), tank, lid));
      } else {
        cues.add(hang(step, tank));
      }
    }
    cues.sort(Comparator.comparing(Cue::at).thenComparing(Cue::step).thenComparing(Cue::act));
    return CountIns.fitted(cues);
  }

  /** Sheets are moved by hand in a dark room: there is no lid to speak of. */
  private static boolean inTray(PlacedStep placed) {
    return placed.step().agitation().manner() == Manner.FILM_LIFT;
  }

  private static void beforeFirst(PlacedStep first, StepCues cues) {
    cues.addReady(first.begin().minus(FIRST_READY));
    if (first.step().light() == Light.DARK) {
      cues.addCapOnly(first.begin().minus(FIRST_CAP));
    }
  }

  /** What is said while the bath before is still in the tank or leaving it. */
  private static List<Cue> towards(PlacedStep now, PlacedStep next, String tank, boolean lid) {
    StepCues cues = new StepCues(next, tank, lid);
    cues.addReady(readyMoment(now));
    Duration lead = now.end().minus(now.drain());
    cues.addNext(now.drain().plus(lead.multipliedBy(5).dividedBy(10)));
    Duration last = now.drain().plus(lead.multipliedBy(3).dividedBy(4));
    if (next.step().light() == Light.DARK) {
      cues.addCapOnly(last);
    } else if (now.step().light() == Light.DARK) {
      cues.addLidOff(last);
    }
    return cues.cues();
  }

  /**
   * 20 s before the drain, never at the moment at which the tank is full, which has a cue of its
   * own: two tones at once are neither. Moved behind a bout of agitation that would be going on
   * then.
   */
  private static Duration readyMoment(PlacedStep now) {
    Duration untilDrain = now.drain().minus(now.full());
    Duration wanted = untilDrain.minusSeconds(20);
    Duration earliest = untilDrain.dividedBy(2);
    if (earliest.compareTo(AFTER_FULL) > 0) {
      earliest = AFTER_FULL;
    }
    if (wanted.compareTo(earliest) < 0) {
      wanted = earliest;
    }
    for (Bout bout : Bouts.of(now.step().agitation(), untilDrain)) {
      boolean within = bout.inStep().compareTo(wanted) <= 0 && wanted.compareTo(bout.end()) < 0;
      if (within && bout.end().plusSeconds(8).compareTo(untilDrain) <= 0) {
        return now.full().plus(bout.end()).plusSeconds(1);
      }
    }
    return now.full().plus(wanted);
  }

  private static Cue hang(PlacedStep last, String tank) {
    StepCues cues = new StepCues(last, tank, true);
    cues.addHang(last.end());
    return cues.cues().get(0);
  }
}
