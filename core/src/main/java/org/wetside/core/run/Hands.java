package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How long pouring in and draining take with one tank, learned from pairs of presses only.
 *
 * @param pours the last five pour-in times, newest last
 * @param drains the last five drain times, newest last
 */
public record Hands(List<Duration> pours, List<Duration> drains) {
  private static final int KEPT = 5;
  private static final Duration BELIEVED = Duration.ofMinutes(2);

  public Hands {
    pours = List.copyOf(pours.subList(Math.max(0, pours.size() - KEPT), pours.size()));
    drains = List.copyOf(drains.subList(Math.max(0, drains.size() - KEPT), drains.size()));
  }

  /** Nothing learned yet. */
  public static Hands unknown() {
    return new Hands(List.of(), List.of());
  }

  /** These and the pairs of one more run. */
  public Hands and(RunState run) {
    List<Duration> pour = new ArrayList<>(pours);
    List<Duration> drain = new ArrayList<>(drains);
    for (int i = 0; i < run.steps().size(); i++) {
      StepMarks marks = run.steps().get(i);
      add(pour, marks.pour(), marks.full());
      if (i + 1 < run.steps().size()) {
        add(drain, marks.drain(), run.steps().get(i + 1).pour());
      }
    }
    return new Hands(pour, drain);
  }

  /** Median pour-in time; empty when nothing was learned. */
  public Optional<Duration> pourIn() {
    return median(pours);
  }

  /** Median drain time; empty when nothing was learned. */
  public Optional<Duration> drain() {
    return median(drains);
  }

  private static void add(List<Duration> times, Optional<Mark> from, Optional<Mark> to) {
    Optional<Instant> begin = from.filter(Mark::pressed).map(Mark::at);
    Optional<Instant> end = to.filter(Mark::pressed).map(Mark::at);
    if (begin.isPresent() && end.isPresent()) {
      Duration time = Duration.between(begin.get(), end.get());
      if (!time.isNegative() && !time.isZero() && time.compareTo(BELIEVED) <= 0) {
        times.add(time);
      }
    }
  }

  private static Optional<Duration> median(List<Duration> times) {
    if (times.isEmpty()) {
      return Optional.empty();
    }
    List<Duration> sorted = times.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return Optional.of(
        sorted.size() % 2 == 1
            ? sorted.get(middle)
            : sorted.get(middle - 1).plus(sorted.get(middle)).dividedBy(2));
  }
}
