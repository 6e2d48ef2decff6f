package org.wetside.app.keeping;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.Answer;
import org.wetside.app.bench.SentEvent;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Outcome;

/**
 * A home in which two threads keep sending events of runs that begin, go on and end, so that
 * bottles, rolls and loads change all the time. What was answered is known.
 */
final class BusyEvening implements AutoCloseable {
  private static final Map<BathKind, String> BOTTLES =
      Map.of(BathKind.DEVELOPER, "D", BathKind.STOP_BATH, "S", BathKind.FIXER, "F");

  private static final int LONGEST_REST_MS = 15;

  final MovedClock clock = new MovedClock("2026-01-14T20:14:00Z");
  final Wetside wetside;
  final Set<String> sent = ConcurrentHashMap.newKeySet();
  final Set<String> answered = ConcurrentHashMap.newKeySet();
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
  private final List<Thread> threads = new ArrayList<>();
  private volatile boolean over;
  private volatile long run;

  BusyEvening(Path folder) {
    wetside = FillDemo.into(new Home(folder), clock);
    run = wetside.bench().newest(1).get(0).card().id();
  }

  void begin(long seed) {
    thread("at the sink", new SplittableRandom(seed), this::lead);
    thread("across the room", new SplittableRandom(seed + 1), this::note);
  }

  /** Moves time on, and begins another run whenever one is over. */
  private void lead(SplittableRandom random, int number) {
    clock.pass(Duration.ofSeconds(random.nextInt(5, 40)));
    if (wetside.bench().look(run).state().phase().over()) {
      String roll =
          wetside
              .addRolls()
              .lines("135 36 TRI-X 400 @400 \"flood " + number + "\"")
              .orRefuse()
              .get(0)
              .number();
      Load load =
          wetside
              .makeLoad()
              .make(
                  new LoadWish(
                      List.of(roll),
                      "Single",
                      "small-tank",
                      new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                      Optional.empty(),
                      Optional.empty(),
                      BOTTLES,
                      Optional.empty(),
                      ""));
      long next = wetside.startRun().of(load.id()).card().id();
      send("start-" + number, next, new Happening.Started(closed(), true));
      run = next;
    }
    Temperature read = Temperature.ofCelsius(19.5 + random.nextInt(10) / 10.0);
    send("reading-" + number, run, new Happening.ReadingTaken("glass rod", read, read, true));
  }

  private void note(SplittableRandom random, int number) {
    send("note-" + number, run, new Happening.Note("tide " + random.nextInt(1000)));
  }

  private static List<String> closed() {
    return ClosingItem.usual(Vessel.SMALL_TANK).stream().map(ClosingItem::id).toList();
  }

  private void send(String id, long to, Happening what) {
    sent.add(id);
    Answer answer =
        wetside
            .bench()
            .take(to, new SentEvent(id, Optional.of(0), what, clock.instant(), "test", ""));
    if (answer.outcome() instanceof Outcome.Applied || answer.outcome() instanceof Outcome.Noted) {
      answered.add(id);
    }
  }

  private interface Act {
    void once(SplittableRandom random, int number);
  }

  private void thread(String name, SplittableRandom random, Act act) {
    Thread thread =
        new Thread(
            () -> {
              try {
                for (int i = 0; !over; i++) {
                  act.once(random, i);
                  Thread.sleep(random.nextInt(LONGEST_REST_MS));
                }
              } catch (InterruptedException | RuntimeException | Error broken) {
                failure.compareAndSet(null, broken);
              }
            },
            name);
    threads.add(thread);
    thread.start();
  }

  /** Ends the threads; fails when one of them failed. */
  void end() throws InterruptedException {
    over = true;
    for (Thread thread : threads) {
      thread.join();
    }
    Throwable broken = failure.get();
    if (broken != null) {
      throw new AssertionError("a thread of the evening failed", broken);
    }
  }

  @Override
  public void close() {
    over = true;
    wetside.close();
  }
}
