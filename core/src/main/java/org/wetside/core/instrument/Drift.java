package org.wetside.core.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.wetside.core.sensitometry.NegativeKind;

/**
 * How far two calibrations of one instrument lie apart: what the earlier one would have read of the
 * later one's steps.
 *
 * @param steps each step of the later one that both can tell of
 */
public record Drift(List<Step> steps) {
  /** Keeps an unmodifiable copy. */
  public Drift {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param label of the later one's tablet
   * @param density as read by the later one [-]
   * @param moved later minus earlier, of the same patch [-]
   */
  public record Step(String label, double density, double moved) {}

  /**
   * From an earlier to a later calibration. Empty steps when they have nothing in common: another
   * channel, or for a densitometer another tablet.
   */
  public static Drift between(Calibration earlier, Calibration later) {
    if (!earlier.channel().equals(later.channel())) {
      return new Drift(List.of());
    }
    return later.method() == Calibration.Method.AS_SHOWN
        ? ofShown(earlier, later)
        : ofPixels(earlier, later);
  }

  /** The largest move in either direction [-]; empty when there is nothing to compare. */
  public OptionalDouble largest() {
    return steps.stream().mapToDouble(step -> Math.abs(step.moved())).max();
  }

  private static Drift ofPixels(Calibration earlier, Calibration later) {
    DensityScale before = earlier.scale();
    DensityScale now = later.scale();
    List<Step> steps = new ArrayList<>();
    for (SeenStep step : later.steps()) {
      if (now.densityOf(step.seen(), NegativeKind.SILVER) instanceof PatchDensity.Read reads
          && before.densityOf(step.seen(), NegativeKind.SILVER) instanceof PatchDensity.Read read) {
        steps.add(new Step(step.label(), reads.density(), reads.density() - read.density()));
      }
    }
    return new Drift(steps);
  }

  /** A densitometer shows the same step of the same tablet twice. */
  private static Drift ofShown(Calibration earlier, Calibration later) {
    List<Step> steps = new ArrayList<>();
    if (earlier.tablet().equalsIgnoreCase(later.tablet())) {
      for (SeenStep step : later.steps()) {
        for (SeenStep before : earlier.steps()) {
          if (before.label().equalsIgnoreCase(step.label())
              && before.seen() instanceof SeenDensity was
              && step.seen() instanceof SeenDensity is) {
            double shown = is.density().value();
            steps.add(new Step(step.label(), shown, shown - was.density().value()));
          }
        }
      }
    }
    return new Drift(steps);
  }
}
