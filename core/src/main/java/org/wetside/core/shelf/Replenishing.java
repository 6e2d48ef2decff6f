package org.wetside.core.shelf;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * How a bath is replenished: for each part, take that much out into a jug, add the replenisher, and
 * return from the jug to the mark; what is then left in the jug is waste (CH-S49). Never more than
 * a small share of the volume at once (CH-S13).
 *
 * @param total replenisher in all
 * @param parts one after the other, with the tank stirred between
 */
public record Replenishing(Volume total, List<Part> parts) {
  /**
   * One part.
   *
   * @param out taken out into the jug
   * @param add replenisher added
   * @param back returned from the jug, to the mark
   */
  public record Part(Volume out, Volume add, Volume back) {
    /** What stays in the jug for good. */
    public Volume waste() {
      return out.minus(back);
    }
  }

  public Replenishing {
    parts = List.copyOf(parts);
  }

  /**
   * The parts for some film.
   *
   * @param mark volume of the bath when full, above 0
   * @param level what is in it now, at most to the mark
   * @param perRoll replenisher for one roll of 80 in²
   * @param film film since it was replenished last
   * @param mostShare most of the volume that may be added at once, above 0 and at most 1
   */
  public static Replenishing of(
      Volume mark, Volume level, Volume perRoll, UnitOfUse film, double mostShare) {
    if (mark.millilitres() <= 0 || level.compareTo(mark) > 0) {
      throw new BadValueException(
          "volume of the bath", level.toString(), "above 0 mL and at most to the mark, " + mark);
    }
    Volume total = perRoll.times(film.rolls());
    double most = mark.millilitres() * mostShare;
    int count = (int) Math.ceil(total.millilitres() / most - 1e-9);
    List<Part> parts = new ArrayList<>();
    double now = level.millilitres();
    for (int i = 0; i < count; i++) {
      double add = total.millilitres() / count;
      double out = Math.min(add, now);
      double back = Math.max(0, Math.min(out, mark.millilitres() - (now - out + add)));
      now = now - out + add + back;
      parts.add(new Part(ml(out), ml(add), ml(back)));
    }
    return new Replenishing(total, parts);
  }

  /** What goes to waste in all. */
  public Volume waste() {
    return ml(parts.stream().mapToDouble(part -> part.waste().millilitres()).sum());
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }
}
