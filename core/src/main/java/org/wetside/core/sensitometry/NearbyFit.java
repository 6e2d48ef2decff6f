package org.wetside.core.sensitometry;

/**
 * Levenberg–Marquardt by damped normal equations, for a search that begins near its end: the same
 * formula through resampled densities, thousands of times. From afar, {@link LeastSquares} is the
 * one to use.
 *
 * <p>The damping follows how much of the promised fall a step has won (the gain ratio), so that a
 * flat valley, as of a shoulder that the readings hardly show, costs a dozen steps and not
 * hundreds.
 */
final class NearbyFit {
  private static final int MOST_STEPS = 300;
  private static final double FIRST_DAMPING = 1e-4;
  private static final double LEAST_DAMPING = 1e-12;
  private static final double MOST_DAMPING = 1e12;
  private static final double MOST_SOFTENING = 0.1;
  private static final double TIGHT = 1e-12;

  /** The search rests when twice in a row neither a step nor its promise was worth anything. */
  private static final int CALM_STEPS = 2;

  private NormalEquations here;
  private NormalEquations there;

  NearbyFit(FitModel model, double[] x, int parameters) {
    here = new NormalEquations(model, x, parameters);
    there = new NormalEquations(model, x, parameters);
  }

  LeastSquaresFit from(double[] start, double[] y) {
    here.at(start, y);
    double damping = FIRST_DAMPING;
    double hardening = 2;
    int calm = 0;
    for (int round = 0; round < MOST_STEPS && damping <= MOST_DAMPING; round++) {
      double promised = here.solve(damping) ? here.promised(damping) : Double.NaN;
      if (!tried(promised, y)) {
        if (promised <= TIGHT * here.squares()) {
          return found(true); // what is left to win is lost in rounding
        }
        damping *= hardening;
        hardening *= 2;
        continue;
      }
      double won = here.squares() - there.squares();
      calm = Math.max(won, promised) <= TIGHT * here.squares() ? calm + 1 : 0;
      swap();
      if (calm == CALM_STEPS) {
        return found(true);
      }
      damping = Math.max(damping * softening(won, promised), LEAST_DAMPING);
      hardening = 2;
    }
    return found(damping > MOST_DAMPING);
  }

  /** Whether the step leads no higher. */
  private boolean tried(double promised, double[] y) {
    if (!(promised >= 0)) {
      return false;
    }
    there.at(here.stepped(), y);
    return there.squares() <= here.squares();
  }

  /** Little damping after a step that kept its promise, more after one that kept less than half. */
  private static double softening(double won, double promised) {
    double gain = promised > 0 ? won / promised : 1;
    return Math.max(MOST_SOFTENING, 1 - Math.pow(2 * gain - 1, 3));
  }

  private void swap() {
    NormalEquations was = here;
    here = there;
    there = was;
  }

  private LeastSquaresFit found(boolean atRest) {
    return new LeastSquaresFit(here.parameters(), here.squares(), atRest);
  }
}
