package org.wetside.app.curves;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.sensitometry.CurveFamily;
import org.wetside.core.sensitometry.DevelopedCurve;
import org.wetside.core.sensitometry.PrintAim;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;

/** What strips of one film show that were developed for several times in one developer. */
public final class ReadFamily {
  /** Draws are made with it, so that an answer can be repeated. */
  public static final long SEED = 1;

  /** Further apart than this, a difference of times could be one of temperatures. */
  private static final double MOST_KELVIN_APART = 0.5;

  /**
   * Reads them together.
   *
   * @throws BadValueException when they are not of one kind, or of fewer than two times
   */
  public FamilyAnswer answer(List<KeptStrip> strips, PrintAim aim) {
    check(strips.stream().map(KeptStrip::strip).toList());
    ReadCurve read = new ReadCurve();
    List<FamilyMember> members =
        strips.stream()
            .map(kept -> new FamilyMember(kept, read.answer(kept.strip().curveReadings())))
            .sorted(
                Comparator.<FamilyMember, java.time.Duration>comparing(
                        one -> one.kept().strip().time())
                    .thenComparing(one -> one.kept().id()))
            .toList();
    CurveFamily family =
        new CurveFamily(
            members.stream()
                .map(one -> new DevelopedCurve(one.kept().strip().time(), one.answer().results()))
                .toList());
    List<ContrastPoint> points = family.contrast(aim.measure());
    boolean enough = points.stream().map(ContrastPoint::seconds).distinct().count() >= 2;
    return new FamilyAnswer(
        members,
        aim,
        points,
        enough ? Optional.of(ContrastDescription.of(points)) : Optional.empty(),
        family.speed(),
        family.times(aim, SEED));
  }

  private static void check(List<FilmStrip> strips) {
    long times = strips.stream().map(FilmStrip::time).distinct().count();
    if (times < 2) {
      throw new BadValueException(
          "curves", times + " different times", "a family wants two or more development times");
    }
    FilmStrip first = strips.get(0);
    for (FilmStrip other : strips) {
      if (!first.isOfOneKindWith(other)) {
        throw new BadValueException(
            "curves",
            words(first) + " and " + words(other),
            "a family is one film in one developer, mixed one way, in one kind of tank");
      }
      if (apart(first, other) > MOST_KELVIN_APART) {
        throw new BadValueException(
            "curves",
            first.temperature().orElseThrow() + " and " + other.temperature().orElseThrow(),
            "a family was developed at one temperature, within 0.5 K");
      }
    }
  }

  private static double apart(FilmStrip one, FilmStrip other) {
    Optional<Temperature> mine = one.temperature();
    Optional<Temperature> theirs = other.temperature();
    return mine.isPresent() && theirs.isPresent()
        ? Math.abs(mine.get().celsius() - theirs.get().celsius())
        : 0;
  }

  private static String words(FilmStrip strip) {
    return strip.film()
        + " in "
        + strip.developer()
        + " "
        + strip.dilution().label()
        + ", "
        + strip.vessel().label();
  }
}
