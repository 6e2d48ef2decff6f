package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.BadValueException;

/**
 * The characteristic curve through the readings of one piece of film: readings of one step
 * averaged, falls levelled out, joined by a monotone cubic. Never read beyond the readings.
 */
public final class CharacteristicCurve {
  /** A step this far off the secondary fit is flagged (model, section 3). */
  private static final double OUTLIER = 0.03;

  /** Levelling out more than this would hide a wrong order or a misread step. */
  private static final double MOST_LEVELLED = 0.10;

  private static final double MOVED = 1e-12;

  private final CurveReadings readings;
  private final Steps steps;
  private final double[] pooled;
  private final MonotoneCubic cubic;
  private final BaseFog baseFog;
  private final Optional<SecondaryFit> secondary;

  private CharacteristicCurve(
      CurveReadings readings, Steps steps, double[] pooled, BaseFog baseFog) {
    this.readings = readings;
    this.steps = steps;
    this.pooled = pooled;
    this.baseFog = baseFog;
    cubic = MonotoneCubic.through(steps.logH(), pooled);
    secondary = SecondaryFit.of(steps.logH(), steps.density());
  }

  /**
   * Through readings.
   *
   * @throws BadValueException when densities fall by far, or base plus fog is neither given nor to
   *     be found
   */
  public static CharacteristicCurve through(CurveReadings readings) {
    Steps steps = Steps.of(readings.readings());
    double[] pooled = MonotoneRepair.of(steps.density(), steps.count());
    refuseFalls(steps, pooled);
    return new CharacteristicCurve(readings, steps, pooled, BaseFog.of(readings, steps));
  }

  private static void refuseFalls(Steps steps, double[] pooled) {
    for (int i = 0; i < pooled.length; i++) {
      if (Math.abs(pooled[i] - steps.density()[i]) > MOST_LEVELLED) {
        int fall = steepestFall(steps.density());
        throw new BadValueException(
            "densities",
            String.format(
                Locale.ROOT,
                "%.2f at log H %.2f, then %.2f at %.2f",
                steps.density()[fall],
                steps.logH()[fall],
                steps.density()[fall + 1],
                steps.logH()[fall + 1]),
            "they fall, and a negative gets denser with exposure: look at the order of the steps"
                + " (falls that need no more than 0.10 are levelled out)");
      }
    }
    if (!(pooled[pooled.length - 1] > pooled[0])) {
      throw new BadValueException(
          "densities",
          String.format(Locale.ROOT, "%.2f on all steps", pooled[0]),
          "they must rise with exposure");
    }
  }

  private static int steepestFall(double[] density) {
    int fall = 0;
    for (int i = 0; i + 1 < density.length; i++) {
      if (density[i + 1] - density[i] < density[fall + 1] - density[fall]) {
        fall = i;
      }
    }
    return fall;
  }

  /** Base plus fog and how it is known. */
  public BaseFog baseFog() {
    return baseFog;
  }

  /** How many different exposures there are. */
  public int stepCount() {
    return steps.size();
  }

  /** Least log10 exposure of the readings. */
  public double firstLogH() {
    return cubic.firstX();
  }

  /** Greatest log10 exposure of the readings. */
  public double lastLogH() {
    return cubic.lastX();
  }

  /** Density at a log10 exposure [-]; empty beyond the readings. */
  public OptionalDouble densityAt(double log10LuxSeconds) {
    double found = cubic.at(log10LuxSeconds);
    return Double.isNaN(found) ? OptionalDouble.empty() : OptionalDouble.of(found);
  }

  /** log10 exposure that gives a density; empty beyond the readings. */
  public OptionalDouble logHFor(double density) {
    double found = cubic.placeOf(density);
    return Double.isNaN(found) ? OptionalDouble.empty() : OptionalDouble.of(found);
  }

  /** The averaged steps by rising exposure, as they were read. */
  public List<StepReading> steps() {
    List<StepReading> out = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      out.add(StepReading.of(steps.logH()[i], steps.density()[i]));
    }
    return out;
  }

  /** The steps that had to be moved because densities fell. */
  public List<MovedStep> moved() {
    List<MovedStep> moved = new ArrayList<>();
    for (int i = 0; i < pooled.length; i++) {
      if (Math.abs(pooled[i] - steps.density()[i]) > MOVED) {
        moved.add(new MovedStep(steps.logH()[i], steps.density()[i], pooled[i]));
      }
    }
    return moved;
  }

  /** The smooth formula through the readings; empty when there are too few or it did not settle. */
  public Optional<SecondaryFit> secondary() {
    return secondary;
  }

  /** Steps more than 0.03 off the secondary fit. */
  public List<Outlier> outliers() {
    List<Outlier> outliers = new ArrayList<>();
    secondary.ifPresent(
        fit -> {
          double[] expected = fit.fitted();
          for (int i = 0; i < expected.length; i++) {
            if (Math.abs(steps.density()[i] - expected[i]) > OUTLIER) {
              outliers.add(new Outlier(steps.logH()[i], steps.density()[i], expected[i]));
            }
          }
        });
    return outliers;
  }

  /**
   * Everything that can be read off, with bands.
   *
   * @param scale the standard speeds
   * @param seed of the resamples, so that bands can be repeated
   */
  public CurveResults results(SpeedScale scale, long seed) {
    double[] read = CurveReader.read(cubic, steps.logH(), pooled, baseFog.density().value());
    String noBands = noBands();
    Optional<Bands> bands =
        noBands.isEmpty()
            ? secondary.map(fit -> new Bands(steps, baseFog, readings.densityStep(), fit))
            : Optional.empty();
    List<Optional<Interval>> intervals =
        bands.map(some -> some.about(read, seed)).orElse(List.of());
    List<CurveResult> results = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      int at = measure.place();
      boolean known = !Double.isNaN(read[at]);
      Optional<Interval> band = intervals.isEmpty() ? Optional.empty() : intervals.get(at);
      String remark =
          !known
              ? NotReached.why(measure, cubic, baseFog.density().value())
              : band.isPresent() ? "" : noBands.isEmpty() ? NotReached.BAND : noBands;
      results.add(
          new CurveResult(
              measure, known ? OptionalDouble.of(read[at]) : OptionalDouble.empty(), band, remark));
    }
    return judged(results, scale, seed);
  }

  /**
   * The band of the curve at each step: what its densities could have been as well, by the same
   * resamples as {@link #results}.
   *
   * @param seed of the resamples
   * @return by rising exposure; empty where no band can be determined
   */
  public List<BandPoint> band(long seed) {
    return noBands().isEmpty()
        ? secondary
            .map(fit -> new Bands(steps, baseFog, readings.densityStep(), fit))
            .map(bands -> bands.along(pooled, seed))
            .orElse(List.of())
        : List.of();
  }

  private CurveResults judged(List<CurveResult> results, SpeedScale scale, long seed) {
    ContrastCondition condition = ContrastCondition.of(results.get(Measure.DELTA_D.place()));
    CurveResult speedPoint = results.get(Measure.LOG_HM.place());
    boolean iso = readings.calibrated() && condition.isMet();
    Optional<SpeedStep> speed = iso ? scale.of(speedPoint.value().getAsDouble()) : Optional.empty();
    List<SpeedStep> band = new ArrayList<>();
    if (speed.isPresent()) {
      speedPoint
          .band()
          .ifPresent(
              around -> {
                Optional<SpeedStep> slow = scale.of(around.high());
                Optional<SpeedStep> fast = scale.of(around.low());
                if (slow.isPresent() && fast.isPresent()) {
                  band.add(slow.get());
                  band.add(fast.get());
                }
              });
    }
    return new CurveResults(results, condition, speed, band, seed);
  }

  private String noBands() {
    if (steps.size() < Bands.FEWEST_STEPS) {
      return "band not determinable: "
          + steps.size()
          + " steps, it wants at least "
          + Bands.FEWEST_STEPS;
    }
    return secondary.isPresent()
        ? ""
        : "band not determinable: no smooth curve came to rest in the readings";
  }
}
