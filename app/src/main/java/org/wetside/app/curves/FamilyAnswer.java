package org.wetside.app.curves;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.sensitometry.PrintAim;
import org.wetside.core.sensitometry.SpeedAtTime;
import org.wetside.core.sensitometry.SpeedStep;
import org.wetside.core.sensitometry.TimeForN;
import org.wetside.reference.StandardSpeeds;

/**
 * What a family of strips shows.
 *
 * @param members by rising time, at least two
 * @param aim what negatives are made for
 * @param contrast against time, in the measure of the aim; strips where it is not determinable are
 *     left out
 * @param description whether an exponential goes through it; empty with fewer than two times
 * @param speed against time
 * @param times for N − 2 to N + 2
 */
public record FamilyAnswer(
    List<FamilyMember> members,
    PrintAim aim,
    List<ContrastPoint> contrast,
    Optional<ContrastDescription> description,
    List<SpeedAtTime> speed,
    List<TimeForN> times) {
  /** S = 0.80/Hm (from memory, agrees with SE-S40). */
  private static final double SPEED_CONSTANT = 0.80;

  public FamilyAnswer {
    members = List.copyOf(members);
    contrast = List.copyOf(contrast);
    speed = List.copyOf(speed);
    times = List.copyOf(times);
  }

  /** Whether every strip was exposed so that a speed can be read. */
  public boolean givesSpeed() {
    return members.stream().allMatch(one -> one.kept().strip().light().givesSpeed());
  }

  /**
   * Exposure index, fixed density 0.10, at a time between those of the family: the mean of strips
   * of one time, on a straight line of its logarithm between times. Empty beyond them.
   */
  public OptionalDouble indexAt(double seconds) {
    TreeMap<Double, Double> lnByTime = new TreeMap<>();
    TreeMap<Double, Integer> count = new TreeMap<>();
    if (givesSpeed()) {
      for (SpeedAtTime one : speed) {
        double time = TimeSpan.toSeconds(one.time());
        one.fixedDensity()
            .value()
            .ifPresent(
                value -> {
                  lnByTime.merge(time, Math.log(value), Double::sum);
                  count.merge(time, 1, Integer::sum);
                });
      }
    }
    lnByTime.replaceAll((time, sum) -> sum / count.getOrDefault(time, 1));
    var below = lnByTime.floorEntry(seconds);
    var above = lnByTime.ceilingEntry(seconds);
    if (below == null || above == null) {
      return OptionalDouble.empty();
    }
    double span = above.getKey() - below.getKey();
    double along = span == 0 ? 0 : (seconds - below.getKey()) / span;
    return OptionalDouble.of(
        Math.exp(below.getValue() + along * (above.getValue() - below.getValue())));
  }

  /** The standard index nearest to {@link #indexAt}, as it is set on a camera. */
  public Optional<SpeedStep> settingAt(double seconds) {
    OptionalDouble index = indexAt(seconds);
    return index.isPresent()
        ? StandardSpeeds.open().of(Math.log10(SPEED_CONSTANT / index.getAsDouble()))
        : Optional.empty();
  }
}
