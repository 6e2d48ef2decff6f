package org.wetside.web.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.Light;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.Mark;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.StepMarks;

/** A bath of a run, planned and as it went; see docs/bench-snapshot.md. */
public record StepView(
    int index,
    String kind,
    String word,
    @Nullable String bottle,
    boolean water,
    boolean wet,
    boolean developing,
    String light,
    boolean lidStaysOn,
    double seconds,
    double plannedSeconds,
    double pourInSeconds,
    double drainLeadSeconds,
    @Nullable Double lengthenToSeconds,
    String afterUse,
    @Nullable Double temperatureLowC,
    @Nullable Double temperatureHighC,
    String standing,
    String source,
    MomentsView planned,
    String beginAt,
    String fullAt,
    String drainAt,
    String endAt,
    @Nullable String begin,
    @Nullable String full,
    @Nullable String drain,
    @Nullable String end,
    boolean done,
    List<LevelView> fill,
    List<BoutView> agitation,
    boolean mayWaitBefore,
    boolean waitAsked,
    @Nullable DoseView dose,
    @Nullable CareView care) {

  /** Four moments. */
  public record MomentsView(String beginAt, String fullAt, String drainAt, String endAt) {
    static MomentsView of(Placement.Moments moments) {
      return new MomentsView(
          Instants.text(moments.begin()),
          Instants.text(moments.full()),
          Instants.text(moments.drain()),
          Instants.text(moments.end()));
    }
  }

  /** Liquid in the tank, 0 to 1. */
  public record LevelView(String at, double level) {}

  /** One bout of agitation. */
  public record BoutView(
      String cue, String at, double seconds, int count, boolean counted, boolean missed) {}

  static List<StepView> all(BenchSnapshot at) {
    Set<String> missed = CueView.missed(at);
    List<StepView> steps = new ArrayList<>();
    for (int i = 0; i < at.state().steps().size(); i++) {
      steps.add(of(at, i, missed));
    }
    return steps;
  }

  private static StepView of(BenchSnapshot at, int index, Set<String> missed) {
    Step step = at.state().plan().step(index);
    StepMarks marks = at.state().steps().get(index);
    Placement.Moments moments = at.moments().steps().get(index);
    Placement.Moments planned = at.planned().steps().get(index);
    boolean last = index == at.state().steps().size() - 1;
    boolean finished = at.state().phase() == Phase.FINISHED;
    Optional<Mark> next = last ? Optional.empty() : at.state().steps().get(index + 1).pour();
    boolean tray = step.agitation().manner() == Manner.FILM_LIFT;
    return new StepView(
        index,
        step.kind().word(),
        step.kind().heading(),
        step.bottle().orElse(null),
        step.kind().water(),
        step.kind().wet(),
        step.kind().developing(),
        step.light().word(),
        step.light() == Light.DARK && !tray,
        TimeSpan.toSeconds(java.time.Duration.between(moments.full(), moments.end())),
        step.duration().map(TimeSpan::toSeconds).orElse(0.0),
        TimeSpan.toSeconds(step.pourIn()),
        TimeSpan.toSeconds(step.drainLead()),
        step.lengthenTo().map(TimeSpan::toSeconds).orElse(null),
        step.afterUse().words(),
        step.band().map(band -> band.low().celsius()).orElse(null),
        step.band().map(band -> band.high().celsius()).orElse(null),
        step.standing().word(),
        step.source(),
        MomentsView.of(planned),
        Instants.text(moments.begin()),
        Instants.text(moments.full()),
        Instants.text(moments.drain()),
        Instants.text(moments.end()),
        how(marks.pour()),
        how(marks.full()),
        how(marks.drain()),
        last && finished ? "planned" : how(next),
        index < at.state().current() || finished,
        fill(step, moments),
        bouts(at, index, missed),
        at.state().mayWaitBefore(index),
        at.state().waitBefore().contains(index),
        DoseView.of(at, index),
        CareView.of(at, index));
  }

  private static @Nullable String how(Optional<Mark> mark) {
    return mark.map(known -> known.how().word()).orElse(null);
  }

  private static List<LevelView> fill(Step step, Placement.Moments moments) {
    if (!step.kind().wet()) {
      return List.of();
    }
    Instant drained = moments.end();
    return List.of(
        new LevelView(Instants.text(moments.begin()), 0),
        new LevelView(Instants.text(moments.full()), 1),
        new LevelView(Instants.text(moments.drain()), 1),
        new LevelView(Instants.text(drained), 0));
  }

  private static List<BoutView> bouts(BenchSnapshot at, int index, Set<String> missed) {
    List<BoutView> bouts = new ArrayList<>();
    for (Cue cue : at.cues()) {
      if (cue.step() == index && cue.act() == Act.AGITATE) {
        boolean counted =
            at.state().plan().step(index).agitation().cycle().map(c -> c.counted()).orElse(false);
        bouts.add(
            new BoutView(
                cue.id(),
                Instants.text(at.at(cue)),
                TimeSpan.toSeconds(cue.length()),
                cue.count(),
                counted,
                missed.contains(cue.id())));
      }
    }
    return bouts;
  }
}
