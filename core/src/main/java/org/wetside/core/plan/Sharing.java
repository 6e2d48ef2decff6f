package org.wetside.core.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;

/** Whether rolls may be developed together: {@link Together}, or {@link Apart} with the reasons. */
public sealed interface Sharing permits Sharing.Together, Sharing.Apart {
  /** Each roll may be off its own time by 5 % (editable; a rule of this program). */
  double USUAL_TOLERANCE = 0.05;

  /**
   * They may.
   *
   * @param time the common time; empty when the rolls have none of their own and the user gives it
   * @param deviations how far each roll with a time of its own is from it
   */
  record Together(Optional<Duration> time, List<Deviation> deviations) implements Sharing {
    public Together {
      deviations = List.copyOf(deviations);
    }
  }

  /** They may not. */
  record Apart(List<Reason> reasons) implements Sharing {
    public Apart {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * What sharing costs one roll.
   *
   * @param number the roll
   * @param ownTime its own time
   * @param timeError common time over own time, less 1 [-]
   * @param contrastError change of contrast, as a part of it [-], where a series exists
   */
  record Deviation(
      String number, Duration ownTime, double timeError, Optional<Double> contrastError) {}

  /** Why not. */
  sealed interface Reason permits OtherKind, NoRoom, TooMany, TimesApart {}

  /** Two rolls need different chemistry. */
  record OtherKind(String number, FilmKind kind, String other, FilmKind otherKind)
      implements Reason {}

  /** The tank takes no film of that format. */
  record NoRoom(String number, FilmSize size, String tank) implements Reason {}

  /** More reels than the tank takes. */
  record TooMany(String tank, Map<FilmFormat, Integer> reels) implements Reason {}

  /** No time lies within the tolerance of both. */
  record TimesApart(
      String shorter, Duration shorterTime, String longer, Duration longerTime, double tolerance)
      implements Reason {}

  /**
   * Judges rolls for one tank and one developer.
   *
   * @param rolls at least one
   * @param tank the tank
   * @param tolerance part of its own time that each roll may be off, 0 to 0.5 [-]
   */
  static Sharing of(List<RollTime> rolls, Tank tank, double tolerance) {
    if (!(tolerance >= 0 && tolerance <= 0.5)) {
      throw new BadValueException(
          "tolerance of sharing", tolerance * 100 + " %", "between 0 and 50 %");
    }
    List<Reason> reasons = new ArrayList<>();
    Roll first = rolls.get(0).roll();
    for (RollTime other : rolls) {
      FilmKind kind = other.roll().described().kind();
      if (kind != first.described().kind()) {
        reasons.add(
            new OtherKind(first.number(), first.described().kind(), other.roll().number(), kind));
      }
    }
    addRoomReasons(rolls, tank, reasons);
    List<RollTime> timed =
        rolls.stream()
            .filter(roll -> roll.time().isPresent())
            .sorted(Comparator.comparing(roll -> roll.time().orElseThrow()))
            .toList();
    if (timed.isEmpty()) {
      return reasons.isEmpty() ? new Together(Optional.empty(), List.of()) : new Apart(reasons);
    }
    RollTime shortest = timed.get(0);
    RollTime longest = timed.get(timed.size() - 1);
    double common = commonSeconds(seconds(shortest), seconds(longest), tolerance);
    if (Double.isNaN(common)) {
      reasons.add(
          new TimesApart(
              shortest.roll().number(),
              shortest.time().orElseThrow(),
              longest.roll().number(),
              longest.time().orElseThrow(),
              tolerance));
    }
    return reasons.isEmpty()
        ? new Together(
            Optional.of(Duration.ofSeconds(Math.round(common))), deviations(timed, common))
        : new Apart(reasons);
  }

  /** How many reels of each format the rolls need; a sheet takes one place of a sheet reel. */
  static Map<FilmFormat, Integer> reels(List<Roll> rolls) {
    Map<FilmFormat, Integer> reels = new EnumMap<>(FilmFormat.class);
    for (Roll roll : rolls) {
      FilmFormat format = roll.described().size().format();
      int places = format == FilmFormat.SHEET ? roll.described().frames().orElse(1) : 1;
      reels.merge(format, places, Integer::sum);
    }
    return reels;
  }

  private static void addRoomReasons(List<RollTime> rolls, Tank tank, List<Reason> reasons) {
    for (RollTime asking : rolls) {
      Roll roll = asking.roll();
      if (tank.room(roll.described().size().format()).isEmpty()) {
        reasons.add(new NoRoom(roll.number(), roll.described().size(), tank.name()));
      }
    }
    Map<FilmFormat, Integer> reels = reels(rolls.stream().map(RollTime::roll).toList());
    if (reasons.isEmpty() && !tank.fits(reels)) {
      reasons.add(new TooMany(tank.name(), reels));
    }
  }

  /** The time whose largest error is smallest, kept within both tolerances; NaN without one. */
  private static double commonSeconds(double shortest, double longest, double tolerance) {
    double low = longest * (1 - tolerance);
    double high = shortest * (1 + tolerance);
    if (low > high + 1e-9) {
      return Double.NaN;
    }
    return Math.min(high, Math.max(low, Math.sqrt(shortest * longest)));
  }

  private static List<Deviation> deviations(List<RollTime> timed, double common) {
    List<Deviation> deviations = new ArrayList<>();
    for (RollTime roll : timed) {
      double factor = common / seconds(roll);
      deviations.add(
          new Deviation(
              roll.roll().number(),
              roll.time().orElseThrow(),
              factor - 1,
              roll.contrastSlope().map(slope -> Math.pow(factor, slope) - 1)));
    }
    return deviations;
  }

  private static double seconds(RollTime roll) {
    return TimeSpan.toSeconds(roll.time().orElseThrow());
  }
}
