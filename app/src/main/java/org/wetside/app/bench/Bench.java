package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.wetside.app.checks.BeforePour;
import org.wetside.core.hands.StartAdvice;
import org.wetside.core.plan.LoadState;
import org.wetside.core.run.Agenda;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Hands;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Judge;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.core.run.Settled;
import org.wetside.core.thermal.Reading;
import org.wetside.core.thermal.Thermometer;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Runs;
import org.wetside.store.Session;
import org.wetside.store.Thermometers;

/**
 * The conductor: holds the runs that are under way, writes what the plan says when it is due, takes
 * what screens send, and tells them of every change. An event is on disk before it is answered.
 */
public final class Bench implements AutoCloseable {
  private final Supplier<Database> database;
  private final Clock clock;
  private final Alarm alarm;
  private final Map<Long, LiveRun> live = new HashMap<>();
  private final Map<Long, Hands> hands = new HashMap<>();
  private final RecentRuns over = new RecentRuns();
  private final List<LongConsumer> watchers = new CopyOnWriteArrayList<>();
  private final KeptCare care;
  private final Absences absences = new Absences(id -> hold(id).state(), this::write);

  /**
   * @param database where runs are kept
   * @param clock the wall clock, monotonic while this process lives
   * @param alarm wakes the conductor when the plan has something due
   */
  public Bench(Supplier<Database> database, Clock clock, Alarm alarm) {
    this.database = database;
    this.clock = clock;
    this.alarm = alarm;
    care = new KeptCare(database);
  }

  /**
   * Takes up every run that was under way when the program last ended. The plan went on by the
   * clock meanwhile; what was missed is written down. A run this conductor already leads was never
   * left alone.
   */
  public synchronized void resume() {
    Instant now = now();
    Optional<Instant> lastAlive = database.get().read(session -> new Runs(session).lastAlive());
    List<Long> underWay = database.get().read(session -> new Runs(session).underWay());
    for (long id : underWay) {
      if (live.containsKey(id)) {
        continue;
      }
      LiveRun run = hold(id);
      if (run.state().phase() != Phase.READY) {
        absences.resumed(id, lastAlive, now);
        advance(id);
      }
    }
    rearm();
  }

  /** Tells a screen's line of every change, by the run's number, until the returned closes. */
  public AutoCloseable watch(LongConsumer watcher) {
    watchers.add(watcher);
    return () -> watchers.remove(watcher);
  }

  /**
   * Where a run stands.
   *
   * @throws NoSuchRunException when there is none
   */
  public synchronized BenchSnapshot look(long id) {
    advance(id);
    rearm();
    return snapshot(id);
  }

  /** The newest runs, at most so many, each as it stands. */
  public synchronized List<BenchSnapshot> newest(int most) {
    return database.get().read(session -> new Runs(session).newest(most)).stream()
        .map(card -> look(card.id()))
        .toList();
  }

  /**
   * Takes what a screen sends.
   *
   * @throws NoSuchRunException when there is no such run
   */
  public synchronized Answer take(long id, SentEvent sent) {
    advance(id);
    if (sent.what() instanceof Happening.Started started) {
      return takeFirstPour(id, sent, started);
    }
    return judged(id, sent);
  }

  /** What is looked at before the first pour is asked for anew, then there is nothing to ask. */
  private Answer takeFirstPour(long id, SentEvent sent, Happening.Started started) {
    BeforePour before = before(hold(id));
    Happening.Started settled = before.settled(started);
    live.put(id, hold(id).asking(before.mustBeAnswered()));
    Answer answer = judged(id, sent.saying(settled));
    live.put(id, hold(id).asking(List.of()));
    return answer.outcome() instanceof Outcome.Asks
        ? new Answer(new Outcome.Asks(before.question(settled)), answer.snapshot())
        : answer;
  }

  private Answer judged(long id, SentEvent sent) {
    RunState state = hold(id).state();
    Optional<RunEvent> known = state.event(sent.id());
    if (known.isPresent()) {
      String noted = state.notedBecause().get(sent.id());
      return answer(id, noted == null ? new Outcome.Applied() : new Outcome.Noted(noted));
    }
    RunEvent event = settled(state, sent);
    Outcome outcome = Judge.of(state, event);
    if (outcome instanceof Outcome.Applied || outcome instanceof Outcome.Noted) {
      store(id, event, outcome);
      advance(id);
      if (outcome instanceof Outcome.Applied && BothTanks.shifts(event.kind())) {
        freeHands(id);
      }
      tell(id);
    }
    rearm();
    return answer(id, outcome);
  }

  @Override
  public synchronized void close() {
    alarm.close();
    if (goesOn()) {
      pulse(now());
    }
  }

  /** A run that has just been opened. */
  synchronized BenchSnapshot opened(long id) {
    BenchSnapshot opened = snapshot(id);
    // Its tank may sound like that of another run, whose cues are then said otherwise.
    live.keySet().forEach(this::tell);
    return opened;
  }

  private Answer answer(long id, Outcome outcome) {
    return new Answer(outcome, snapshot(id));
  }

  private BenchSnapshot snapshot(long id) {
    LiveRun run = hold(id);
    Hands known = hands.computeIfAbsent(id, unused -> learned(run));
    if (run.state().phase().over()) {
      live.remove(id);
      hands.remove(id);
      over.put(id, new RecentRuns.Left(run, known));
    }
    List<LiveRun> all = List.copyOf(live.values());
    return BenchSnapshot.of(run, known, before(run), care.of(run), now())
        .beside(BothTanks.nextClash(run, all, now()), BothTanks.namesBeside(run, all));
  }

  private BeforePour before(LiveRun run) {
    return run.state().phase() == Phase.READY
        ? BeforePour.of(database, PourOf.run(run, now()), care.of(run))
        : BeforePour.OVER;
  }

  private Hands learned(LiveRun run) {
    return database.get().read(session -> LearnedHands.with(session, run.card().tank()));
  }

  private RunEvent settled(RunState state, SentEvent sent) {
    Instant received = now();
    int step = sent.step().orElse(Math.max(0, state.current()));
    Instant occurred = sent.occurredAt().truncatedTo(ChronoUnit.MILLIS);
    return new RunEvent(
        sent.id(),
        state.sequence() + 1,
        step,
        corrected(sent.what()),
        Settled.moment(state, step, occurred, received),
        received,
        sent.screen(),
        sent.key());
  }

  private Happening corrected(Happening what) {
    if (!(what instanceof Happening.ReadingTaken raw)) {
      return what;
    }
    Thermometer thermometer = database.get().read(session -> thermometer(session, raw));
    Reading reading = thermometer.read(raw.raw());
    return new Happening.ReadingTaken(
        thermometer.name(), reading.raw(), reading.corrected(), raw.confirmed());
  }

  /** The one that was named; where none was, the only one there is. */
  private static Thermometer thermometer(Session session, Happening.ReadingTaken raw) {
    Thermometers thermometers = new Thermometers(session);
    List<Thermometer> all = raw.thermometer().isBlank() ? thermometers.all() : List.of();
    return all.size() == 1
        ? all.get(0)
        : thermometers
            .find(raw.thermometer())
            .orElseGet(() -> Thermometer.unchecked(raw.thermometer()));
  }

  /** Writes everything of the plan that is due by now. */
  private void advance(long id) {
    Instant now = now();
    boolean moved = absences.found(id, now);
    for (Optional<Agenda.Due> due = due(id, now); due.isPresent(); due = due(id, now)) {
      RunState state = hold(id).state();
      Agenda.Due next = due.get();
      RunEvent event =
          new RunEvent(
              "plan-" + (state.sequence() + 1),
              state.sequence() + 1,
              next.step(),
              next.what(),
              Settled.moment(state, next.step(), next.at(), now),
              now,
              RunEvent.CONDUCTOR,
              "");
      Outcome outcome = Judge.of(state, event);
      if (!(outcome instanceof Outcome.Applied)) {
        throw new IllegalStateException("the plan cannot go on with " + event + ": " + outcome);
      }
      store(id, event, outcome);
      moved = true;
    }
    if (moved) {
      tell(id);
    }
  }

  private Optional<Agenda.Due> due(long id, Instant now) {
    return Agenda.next(hold(id).state()).filter(next -> !next.at().isAfter(now));
  }

  /**
   * A screen that has led a run without a break since a moment, by its own plan while this program
   * was away: what was due meanwhile was told after all.
   *
   * @throws NoSuchRunException when there is no such run
   */
  public synchronized void led(long id, String screen, Instant since) {
    hold(id);
    if (absences.led(id, screen, since, now())) {
      tell(id);
    }
  }

  /**
   * When a run that is ready is best begun beside the others; empty when nothing else is going on.
   *
   * @throws NoSuchRunException when there is no such run
   */
  public Optional<StartAdvice> startAdvice(long id) {
    LiveRun ready;
    List<LiveRun> all;
    synchronized (this) {
      ready = hold(id);
      all = List.copyOf(live.values());
    }
    // The search may take a second: the runs go on meanwhile.
    return BothTanks.startOf(ready, all, now());
  }

  /** Keeps the hands free: what may last longer gives way, and the record says why. */
  private void freeHands(long id) {
    // What one run could not mend alone, the other may.
    for (int pass = 0; pass < 2; pass++) {
      for (BothTanks.GivesWay way : BothTanks.after(hold(id), List.copyOf(live.values()), now())) {
        write(way.run(), new Outage.Missed(now(), way.step(), way.what()));
        tell(way.run());
      }
    }
  }

  private void write(long id, Outage.Missed missed) {
    RunState state = hold(id).state();
    RunEvent event =
        new RunEvent(
            "away-" + (state.sequence() + 1),
            state.sequence() + 1,
            missed.step(),
            missed.what(),
            missed.at(),
            now(),
            RunEvent.CONDUCTOR,
            "");
    store(id, event, Judge.of(state, event));
  }

  private void store(long id, RunEvent event, Outcome outcome) {
    LiveRun before = hold(id);
    LiveRun after = before.after(event);
    database
        .get()
        .change(
            session -> {
              new Runs(session).append(id, event, after.state());
              if (outcome instanceof Outcome.Applied) {
                settle(session, before, after, event);
                new BottleDoubts(session, after).follow(before.state(), event);
              }
            });
    live.put(id, after);
  }

  private static void settle(Session session, LiveRun before, LiveRun after, RunEvent event) {
    Instant at = event.occurredAt();
    boolean wasOver = before.state().phase().over();
    boolean isOver = after.state().phase().over();
    if (event.kind() == EventKind.STARTED) {
      after.card().load().ifPresent(load -> new Loads(session).move(load, LoadState.RUNNING));
    } else if (isOver && !wasOver) {
      Settlement settlement = new Settlement(session, after);
      if (after.state().phase() == Phase.FINISHED) {
        settlement.finish(at);
      } else {
        settlement.abandon(at);
      }
    } else if (wasOver && !isOver) {
      new Settlement(session, before).reopen(at);
    }
  }

  private LiveRun hold(long id) {
    LiveRun held = live.get(id);
    if (held == null) {
      Optional<RecentRuns.Left> left = over.take(id);
      left.ifPresent(one -> hands.put(id, one.hands()));
      held = left.map(RecentRuns.Left::run).orElse(null);
    }
    if (held == null) {
      held =
          database
              .get()
              .read(session -> LiveRun.load(session, id))
              .orElseThrow(() -> new NoSuchRunException(id));
    }
    live.put(id, held);
    return held;
  }

  private boolean goesOn() {
    return live.values().stream()
        .map(run -> run.state().phase())
        .anyMatch(phase -> phase == Phase.RUNNING || phase == Phase.WAITING);
  }

  private synchronized void ring() {
    Instant now = now();
    for (long id : List.copyOf(live.keySet())) {
      advance(id);
    }
    if (goesOn() && !now.isBefore(absences.nextPulse())) {
      pulse(now);
    }
    rearm();
  }

  private void pulse(Instant now) {
    database.get().change(session -> new Runs(session).alive(now));
    absences.seen(now);
  }

  private void rearm() {
    Optional<Instant> next =
        live.values().stream()
            .flatMap(run -> Agenda.next(run.state()).stream())
            .map(Agenda.Due::at)
            .min(Instant::compareTo);
    next = Stream.concat(next.stream(), absences.next().stream()).min(Instant::compareTo);
    // The pulse beats for every run that goes on, also for one whose end is left to the hands.
    if (goesOn()) {
      Instant beat = absences.nextPulse();
      alarm.set(next.filter(beat::isAfter).orElse(beat), this::ring);
    }
  }

  private void tell(long id) {
    for (LongConsumer watcher : watchers) {
      watcher.accept(id);
    }
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
