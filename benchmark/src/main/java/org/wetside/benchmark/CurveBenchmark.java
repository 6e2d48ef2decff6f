package org.wetside.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.CurveReadings;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.SecondaryFit;
import org.wetside.core.sensitometry.SoftplusShape;
import org.wetside.core.sensitometry.SpeedScale;
import org.wetside.core.sensitometry.StepReading;

/** One tablet of 21 steps: its results with bands, and its smooth curve through 1,000 resamples. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CurveBenchmark {
  /** Standard deviation of the densities: rounding to 0.01 alone gives 0.003. */
  @Param({"0.003", "0.01"})
  public double sd = 0.003;

  private static final SoftplusShape FILM = new SoftplusShape(0.25, 0.70, -2.50, 0.12, -0.30, 0.25);
  private static final SpeedScale SCALE = new SpeedScale(List.of());
  private static final int RESAMPLES = 1000;
  private static final int STEPS = 21;

  private final List<double[]> resamples = new ArrayList<>();
  private CurveReadings readings = tablet(0.003, new SplittableRandom(1));
  private SecondaryFit fit = CharacteristicCurve.through(readings).secondary().orElseThrow();

  /** Draws the tablet and its resamples. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(1);
    readings = tablet(sd, random);
    fit = CharacteristicCurve.through(readings).secondary().orElseThrow();
    resamples.clear();
    for (int i = 0; i < RESAMPLES; i++) {
      double[] density = fit.fitted();
      for (int step = 0; step < density.length; step++) {
        density[step] += sd * random.nextGaussian();
      }
      resamples.add(density);
    }
  }

  private static CurveReadings tablet(double sd, SplittableRandom random) {
    List<StepReading> steps = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      double logH = -3.40 + 0.15 * i;
      steps.add(StepReading.of(logH, FILM.densityAt(logH) + sd * random.nextGaussian()));
    }
    return new CurveReadings(steps, Optional.of(OpticalDensity.of(FILM.base())), 0.001, false);
  }

  /** All results of the tablet with their bands of 1,000 resamples. */
  @Benchmark
  public CurveResults curveWithBands() {
    return CharacteristicCurve.through(readings).results(SCALE, 1);
  }

  /** The smooth curve through 1,000 resamples, each begun from the tablet's own. */
  @Benchmark
  public double refitsBegunNear() {
    double sum = 0;
    for (double[] density : resamples) {
      sum += fit.again(density).map(SecondaryFit::residualSd).orElse(0.0);
    }
    return sum;
  }

  /** The same by the library's fitter, each begun from what its densities show. */
  @Benchmark
  public double refitsBegunAfresh() {
    double sum = 0;
    for (double[] density : resamples) {
      sum += fit.afresh(density).map(SecondaryFit::residualSd).orElse(0.0);
    }
    return sum;
  }
}
