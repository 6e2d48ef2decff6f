package org.wetside.web.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.checks.PreciousChecks;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RollInTank;

/** A run as a screen gets it; what each field means stands in docs/bench-snapshot.md. */
public record SnapshotView(
    String now,
    long run,
    @Nullable Long load,
    long sequence,
    String name,
    String tank,
    List<RollView> rolls,
    String process,
    String processName,
    @Nullable Double volumeMl,
    String phase,
    boolean interrupted,
    boolean provisional,
    @Nullable String startedAt,
    int currentStep,
    @Nullable String waitingUntil,
    String endsAt,
    String plannedEndsAt,
    double movedSeconds,
    String movedBecause,
    List<StepView> steps,
    List<CueView> cues,
    List<GapView> gaps,
    List<ReadingView> readings,
    List<KeyView> keys,
    @Nullable NothingView nothingToPress,
    List<StripView> strips,
    List<MishapView> mishaps,
    List<CheckView> checks,
    ClosingView closing,
    List<String> preciousReasons,
    HandsView hands,
    List<EventView> events,
    @Nullable AfterView after) {

  /** A roll at its place. */
  public record RollView(String number, String film, int position, String place) {
    static RollView of(RollInTank roll) {
      return new RollView(roll.number(), roll.film(), roll.position(), roll.place());
    }
  }

  /** What the dashed place says. */
  public record NothingView(String text, @Nullable String at) {}

  /**
   * A mishap with its advice.
   *
   * @param asks what may be said once it was told: dilution, bottle, or null
   */
  public record MishapView(
      String what, String firstMinute, String afterwards, String standing, @Nullable String asks) {
    static MishapView of(MishapAdvice advice) {
      return new MishapView(
          advice.what(),
          advice.firstMinute(),
          advice.afterwards(),
          advice.standing().word(),
          advice.asks().orElse(null));
    }
  }

  /**
   * How long the check of the closed tank is this time.
   *
   * @param whole whether it is the whole list
   * @param because why, in a sentence; empty once the run has begun
   */
  public record ClosingView(boolean whole, String because) {}

  /** Pour-in and drain times as learned, or as usual. */
  public record HandsView(
      double pourInSeconds, double drainSeconds, int pourInPairs, int drainPairs) {}

  /** The view of a snapshot. */
  public static SnapshotView of(BenchSnapshot at, List<MishapAdvice> mishaps) {
    Duration moved = Duration.between(at.planned().end(), at.endsAt());
    return new SnapshotView(
        Instants.text(at.now()),
        at.card().id(),
        at.card().load().orElse(null),
        at.state().sequence(),
        at.card().name(),
        at.card().tank(),
        at.card().rolls().stream().map(RollView::of).toList(),
        at.card().process(),
        at.card().processName(),
        at.card().volume().map(Volume::millilitres).orElse(null),
        at.state().phase().word(),
        at.state().interrupted(),
        at.provisional(),
        Instants.textOrNull(at.state().startedAt()),
        at.state().current(),
        Instants.textOrNull(at.waitingUntil()),
        Instants.text(at.endsAt()),
        Instants.text(at.planned().end()),
        TimeSpan.toSeconds(moved),
        MovedWords.of(at.state(), at.moments(), at.planned()),
        StepView.all(at),
        CueView.all(at),
        GapView.all(at),
        ReadingView.all(at),
        at.keys().stream().map(KeyView::of).toList(),
        nothing(at),
        StripView.all(at),
        mishaps.stream().map(MishapView::of).toList(),
        CheckView.all(at.before().checks()),
        new ClosingView(at.before().closing().whole(), at.before().closing().because()),
        at.provisional() ? PreciousChecks.REASONS : List.of(),
        hands(at),
        EventView.all(at),
        AfterView.of(at));
  }

  private static @Nullable NothingView nothing(BenchSnapshot at) {
    if (at.state().phase().over()) {
      return null;
    }
    if (at.state().phase() == Phase.READY) {
      return new NothingView("First pour", null);
    }
    Instant drain = at.moments().steps().get(at.state().current()).drain();
    return new NothingView("Drain", Instants.text(drain));
  }

  private static HandsView hands(BenchSnapshot at) {
    return new HandsView(
        TimeSpan.toSeconds(at.hands().pourIn().orElse(org.wetside.core.process.Step.POUR_IN)),
        TimeSpan.toSeconds(at.hands().drain().orElse(org.wetside.core.process.Step.DRAIN_LEAD)),
        at.hands().pours().size(),
        at.hands().drains().size());
  }
}
