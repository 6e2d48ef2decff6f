package org.wetside.core.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether something drifts: water, thermometer, bottle. Every roll is compared with what was known
 * before it, in standard deviations of that expectation, so that without a drift each lies within
 * two in nineteen of twenty cases from the first roll on.
 *
 * <p>A roll raises the flag when it lies beyond three, or when it is the second of the last three
 * beyond two on the same side. What is believed follows a drift as well as it follows the truth:
 * the second roll off is compared with a belief that the first has already moved. Therefore the
 * last rolls are also compared, all of them, with what was known before the first of them, as soon
 * as {@link #KNOWN_BEFORE} rolls stand before it. The limits are the usual ones of control charts
 * (common practice).
 */
public final class ControlChart {
  /** Beyond so many standard deviations one roll is enough. */
  public static final double ACTION = 3;

  /** Beyond so many standard deviations two of three rolls on one side are enough. */
  public static final double WARNING = 2;

  /** Rolls judged together. */
  static final int TOGETHER = 3;

  /** So many rolls make a belief that a stretch of later ones can be held against. */
  static final int KNOWN_BEFORE = 3;

  /** Without any roll. */
  static final ControlChart EMPTY = new ControlChart(List.of());

  private final List<ChartPoint> points;

  private ControlChart(List<ChartPoint> points) {
    this.points = List.copyOf(points);
  }

  /** Of these rolls, put in the order in which they were developed. */
  public static ControlChart of(Scatter scatter, List<RollSeen> rolls) {
    List<RollSeen> ordered = new ArrayList<>(rolls);
    ordered.sort(Comparator.comparing(RollSeen::at));
    List<Learned> before = new ArrayList<>();
    List<ChartPoint> points = new ArrayList<>();
    for (int i = 0; i < ordered.size(); i++) {
      before.add(Learned.from(scatter, ordered.subList(0, i)));
      points.add(point(ordered, before, points, i));
    }
    return new ControlChart(points);
  }

  private static ChartPoint point(
      List<RollSeen> rolls, List<Learned> before, List<ChartPoint> points, int i) {
    RollSeen roll = rolls.get(i);
    double residual = before.get(i).standardised(roll);
    int first = Math.max(0, i - TOGETHER + 1);
    List<Double> stepwise = new ArrayList<>();
    for (int j = first; j < i; j++) {
      stepwise.add(points.get(j).residual());
    }
    stepwise.add(residual);
    Drift drift = drift(stepwise);
    int known = Math.max(first, KNOWN_BEFORE);
    double held = residual;
    if (known < i) {
      List<Double> together = new ArrayList<>();
      for (int j = known; j <= i; j++) {
        together.add(before.get(known).standardised(rolls.get(j)));
      }
      held = together.get(together.size() - 1);
      drift = drift == Drift.NONE ? drift(together) : drift;
    }
    return new ChartPoint(roll, before.get(i).of(roll.of()).mean(), residual, held, drift);
  }

  /** What the last of some rolls raises, with those before it. */
  private static Drift drift(List<Double> residuals) {
    double last = residuals.get(residuals.size() - 1);
    if (Math.abs(last) > ACTION) {
      return last > 0 ? Drift.ONE_SLOW : Drift.ONE_FAST;
    }
    if (last > WARNING && residuals.stream().filter(one -> one > WARNING).count() >= 2) {
      return Drift.TWO_SLOW;
    }
    return last < -WARNING && residuals.stream().filter(one -> one < -WARNING).count() >= 2
        ? Drift.TWO_FAST
        : Drift.NONE;
  }

  /** Every roll, in the order in which they were developed. */
  public List<ChartPoint> points() {
    return points;
  }

  /** Whether any roll raised the flag. */
  public boolean isFlagged() {
    return points.stream().anyMatch(ChartPoint::isFlagged);
  }
}
