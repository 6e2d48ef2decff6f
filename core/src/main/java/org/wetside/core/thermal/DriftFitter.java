package org.wetside.core.thermal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TimeSpan;

/** Least squares for {@link DriftFit}: a coarse search for τ, then Levenberg–Marquardt. */
final class DriftFitter {
  /** A time constant beyond this many spans of the readings cannot be told from "no change". */
  private static final double LONGEST_SPANS = 1000;

  private static final double SHORTEST_SPANS = 1e-3;
  private static final int SEARCH_STEPS = 120;

  /** A fitted room beyond these is no room: the readings do not determine it. */
  private static final double COLDEST_ROOM_CELSIUS = -30;

  private static final double HOTTEST_ROOM_CELSIUS = 60;
  private static final double TIGHT = 1e-15;

  private final double[] seconds;
  private final double[] celsius;
  private final double spanSeconds;

  DriftFitter(List<TimedReading> readings) {
    List<TimedReading> ordered =
        readings.stream().sorted(Comparator.comparing(TimedReading::elapsed)).toList();
    if (ordered.size() < 2) {
      throw new BadValueException(
          "readings", ordered.size() + "", "at least 2 are needed, with the room known");
    }
    for (int i = 1; i < ordered.size(); i++) {
      if (ordered.get(i).elapsed().equals(ordered.get(i - 1).elapsed())) {
        throw new BadValueException(
            "readings",
            "two at " + TimeSpan.toSeconds(ordered.get(i).elapsed()) + " s",
            "each needs a moment of its own");
      }
    }
    seconds = ordered.stream().mapToDouble(r -> TimeSpan.toSeconds(r.elapsed())).toArray();
    celsius = ordered.stream().mapToDouble(r -> r.temperature().celsius()).toArray();
    spanSeconds = seconds[seconds.length - 1] - seconds[0];
  }

  DriftFit withRoom(Temperature room) {
    double first = celsius[0] - room.celsius();
    double last = celsius[celsius.length - 1] - room.celsius();
    if (first == 0 || first * last <= 0) {
      return new DriftFit.NotDeterminable(
          "a bath drifts towards the room and never past it: the first reading is "
              + celsius[0]
              + " °C, the last "
              + celsius[celsius.length - 1]
              + " °C, the room "
              + room);
    }
    if (Math.abs(last) >= Math.abs(first)) {
      return new DriftFit.NotDeterminable(
          "the readings do not come nearer to the room's " + room + ": wait longer, or check both");
    }
    return fit(Optional.of(room));
  }

  DriftFit findingRoom() {
    if (seconds.length < 3) {
      throw new BadValueException(
          "readings", seconds.length + "", "at least 3 are needed when the room is not known");
    }
    if (celsius[0] == celsius[celsius.length - 1]) {
      return new DriftFit.NotDeterminable(
          "the bath does not change over these readings: wait longer, or give the room");
    }
    return fit(Optional.empty());
  }

  private DriftFit fit(Optional<Temperature> room) {
    double tau = coarseTau(room);
    double[] amplitudeAndRoom = linearPart(tau, room);
    double[] start =
        room.isPresent()
            ? new double[] {amplitudeAndRoom[0], tau}
            : new double[] {amplitudeAndRoom[0], tau, amplitudeAndRoom[1]};
    RealVector found;
    try {
      found =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TIGHT)
              .withParameterRelativeTolerance(TIGHT)
              .optimize(
                  new LeastSquaresBuilder()
                      .model(point -> model(point, room))
                      .target(celsius)
                      .start(start)
                      .maxEvaluations(2000)
                      .maxIterations(2000)
                      .lazyEvaluation(false)
                      .build())
              .getPoint();
    } catch (MathRuntimeException e) {
      return new DriftFit.NotDeterminable("the readings do not settle on one drift");
    }
    return judged(found, room);
  }

  private DriftFit judged(RealVector found, Optional<Temperature> room) {
    double amplitude = found.getEntry(0);
    double tau = found.getEntry(1);
    double ambient = room.map(Temperature::celsius).orElseGet(() -> found.getEntry(2));
    boolean determined =
        tau > spanSeconds * SHORTEST_SPANS
            && tau < spanSeconds * LONGEST_SPANS
            && ambient > COLDEST_ROOM_CELSIUS
            && ambient < HOTTEST_ROOM_CELSIUS;
    if (!determined) {
      return new DriftFit.NotDeterminable(
          room.isPresent()
              ? "the change is too small for the time between the readings: wait longer"
              : "the readings hardly bend: take them over a longer time, or give the room");
    }
    RealVector left = model(found, room).getFirst().subtract(new ArrayRealVector(celsius));
    boolean spare = seconds.length > found.getDimension();
    return new DriftFit.Found(
        new Drift(Temperature.ofCelsius(ambient), TimeSpan.ofSeconds(tau)),
        Temperature.ofCelsius(ambient + amplitude),
        TemperatureDifference.ofKelvins(
            spare ? Math.sqrt(left.dotProduct(left) / seconds.length) : 0),
        room.isEmpty());
  }

  /** Value and Jacobian of ambient + amplitude·e^(−t/τ) at the point (amplitude, τ[, ambient]). */
  private Pair<RealVector, RealMatrix> model(RealVector point, Optional<Temperature> room) {
    double amplitude = point.getEntry(0);
    double tau = point.getEntry(1);
    double ambient = room.map(Temperature::celsius).orElseGet(() -> point.getEntry(2));
    RealVector value = new ArrayRealVector(seconds.length);
    RealMatrix jacobian = MatrixUtils.createRealMatrix(seconds.length, point.getDimension());
    for (int i = 0; i < seconds.length; i++) {
      double left = Math.exp(-seconds[i] / tau);
      value.setEntry(i, ambient + amplitude * left);
      jacobian.setEntry(i, 0, left);
      jacobian.setEntry(i, 1, amplitude * left * seconds[i] / (tau * tau));
      if (room.isEmpty()) {
        jacobian.setEntry(i, 2, 1);
      }
    }
    return new Pair<>(value, jacobian);
  }

  private double coarseTau(Optional<Temperature> room) {
    double best = spanSeconds;
    double least = Double.POSITIVE_INFINITY;
    for (int step = 0; step <= SEARCH_STEPS; step++) {
      double tau =
          spanSeconds
              * SHORTEST_SPANS
              * Math.pow(LONGEST_SPANS / SHORTEST_SPANS, (double) step / SEARCH_STEPS);
      double[] linear = linearPart(tau, room);
      double squares = 0;
      for (int i = 0; i < seconds.length; i++) {
        double miss = linear[1] + linear[0] * Math.exp(-seconds[i] / tau) - celsius[i];
        squares += miss * miss;
      }
      if (squares < least) {
        least = squares;
        best = tau;
      }
    }
    return best;
  }

  /** Best amplitude and ambient for a given τ: a straight line over e^(−t/τ). */
  private double[] linearPart(double tau, Optional<Temperature> room) {
    double n = seconds.length;
    double sx = 0;
    double sy = 0;
    double sxx = 0;
    double sxy = 0;
    for (int i = 0; i < seconds.length; i++) {
      double x = Math.exp(-seconds[i] / tau);
      double y = celsius[i] - room.map(Temperature::celsius).orElse(0.0);
      sx += x;
      sy += y;
      sxx += x * x;
      sxy += x * y;
    }
    if (room.isPresent()) {
      return new double[] {sxy / sxx, room.get().celsius()};
    }
    double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
    return new double[] {slope, (sy - slope * sx) / n};
  }
}
