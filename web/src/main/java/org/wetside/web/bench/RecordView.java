package org.wetside.web.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.times.AskRate;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunEvent;

/** Everything that was done in a run, complete by itself. */
public record RecordView(
    long run,
    String name,
    String tank,
    String process,
    List<SnapshotView.RollView> rolls,
    String developer,
    String dilution,
    @Nullable Double temperatureC,
    String timeStanding,
    String timeSource,
    @Nullable Double volumeMl,
    @Nullable String startedAt,
    @Nullable String endedAt,
    String phase,
    List<DoneView> steps,
    List<ReadingView> readings,
    List<LiquidView> liquids,
    List<String> mishaps,
    List<String> notes,
    List<String> missed,
    List<GapView> gaps,
    List<String> hang,
    @Nullable String doNotTouchUntil,
    @Nullable DoseReachedView dose,
    List<EventView> events) {

  /** A step, planned and actual. */
  public record DoneView(
      String word,
      @Nullable String bottle,
      double plannedSeconds,
      double actualSeconds,
      StepView.MomentsView planned,
      StepView.MomentsView actual) {}

  /** What a bottle gave, and where it went afterwards. */
  public record LiquidView(
      String word, @Nullable String bottle, @Nullable Double volumeMl, String wentTo) {}

  /** The record as it stands; complete when the run is over. */
  public static RecordView of(BenchSnapshot at, AskRate printed) {
    AfterView after = AfterView.of(at);
    return new RecordView(
        at.card().id(),
        at.card().name(),
        at.card().tank(),
        at.card().processName(),
        at.card().rolls().stream().map(SnapshotView.RollView::of).toList(),
        at.card().developer(),
        at.card().dilution().label(),
        at.card().temperature().map(t -> t.celsius()).orElse(null),
        at.card().timeStanding().word(),
        at.card().timeSource(),
        at.card().volume().map(Volume::millilitres).orElse(null),
        Instants.textOrNull(at.state().startedAt()),
        Instants.textOrNull(at.state().endedAt()),
        at.state().phase().word(),
        steps(at),
        ReadingView.all(at),
        liquids(at),
        words(at, EventKind.MISHAP),
        words(at, EventKind.NOTE),
        CueView.all(at).stream().filter(CueView::missed).map(CueView::text).toList(),
        GapView.all(at),
        after == null ? List.of() : after.hang(),
        after == null ? null : after.doNotTouchUntil(),
        DoseReachedView.of(at, printed),
        EventView.all(at));
  }

  private static List<DoneView> steps(BenchSnapshot at) {
    List<DoneView> steps = new ArrayList<>();
    for (int i = 0; i <= at.state().current(); i++) {
      Step step = at.state().plan().step(i);
      Placement.Moments moments = at.moments().steps().get(i);
      steps.add(
          new DoneView(
              step.kind().heading(),
              step.bottle().orElse(null),
              step.duration().map(TimeSpan::toSeconds).orElse(0.0),
              TimeSpan.toSeconds(Duration.between(moments.full(), moments.end())),
              StepView.MomentsView.of(at.planned().steps().get(i)),
              StepView.MomentsView.of(moments)));
    }
    return steps;
  }

  private static List<LiquidView> liquids(BenchSnapshot at) {
    List<LiquidView> liquids = new ArrayList<>();
    for (int i = 0; i <= at.state().current(); i++) {
      Step step = at.state().plan().step(i);
      Optional<Volume> taken = at.taken().get(i);
      if (step.bottle().isPresent()) {
        liquids.add(
            new LiquidView(
                step.kind().heading(),
                step.bottle().get(),
                taken.map(Volume::millilitres).orElse(null),
                step.afterUse().words()));
      }
    }
    return liquids;
  }

  private static List<String> words(BenchSnapshot at, EventKind kind) {
    List<String> words = new ArrayList<>();
    for (RunEvent event : at.state().applied()) {
      if (event.kind() == kind) {
        boolean advised =
            event.what() instanceof Happening.Mishap mishap && !mishap.advice().isEmpty();
        words.add(
            EventWords.of(at.state(), event)
                + (advised
                    ? " (advised: " + ((Happening.Mishap) event.what()).advice() + ")"
                    : ""));
      }
    }
    return words;
  }
}
