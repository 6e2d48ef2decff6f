package org.wetside.web.mixing;

import java.util.List;
import java.util.stream.Collectors;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.BathWanted;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TimeInBand;

/** How a bath is tempered, in words. */
final class BathTemperWords {
  private final BathTempered one;
  private final Units units;

  BathTemperWords(BathTempered one, Units units) {
    this.one = one;
    this.units = units;
  }

  static String way(BathTempered.Way way) {
    return switch (way) {
      case STAND_IN_WATER -> "stand in water";
      case MIX -> "mix";
      case AS_IT_COMES -> "as it comes";
    };
  }

  /** What is poured, coldest first; the nearest that can be done where it is not reached. */
  List<Liquid> pours() {
    List<Liquid> all =
        one.waters() instanceof Tempering.Reached reached
            ? reached.pour()
            : ((Tempering.CannotBeReached) one.waters()).nearestPour();
    return all.stream().filter(part -> part.volume().millilitres() > 0).toList();
  }

  /** What to do. */
  String todo() {
    return switch (one.way()) {
      case STAND_IN_WATER -> standing();
      case MIX -> mixed();
      case AS_IT_COMES ->
          pours().isEmpty()
              ? "As it is: " + units.words(one.asItComes()) + "."
              : "As it comes: " + poured() + stock() + each() + ".";
    };
  }

  private String standing() {
    String around = units.words(one.water());
    return one.waters() instanceof Tempering.Reached reached
        ? "Stand it in "
            + around
            + " of water at "
            + units.words(reached.waterTemperature())
            + " ("
            + poured()
            + "), turn it now and then, and read it before the pour."
        : "Standing in "
            + around
            + " of the nearest water there is ("
            + poured()
            + ") does not bring it to "
            + units.words(one.bath().target())
            + " at once: change that water until it reads right.";
  }

  private String mixed() {
    return one.waters() instanceof Tempering.CannotBeReached none
        ? units.words(one.bath().target())
            + " cannot be reached; the nearest is "
            + units.words(none.nearest())
            + ", with "
            + poured()
            + stock()
            + each()
            + "."
        : poured()
            + stock()
            + ": "
            + units.words(one.bath().volume())
            + " at "
            + units.words(one.bath().target())
            + each()
            + ".";
  }

  private String poured() {
    return pours().stream()
        .map(
            part ->
                units.words(part.volume())
                    + " "
                    + part.name()
                    + " at "
                    + units.words(part.temperature()))
        .collect(Collectors.joining(" and "));
  }

  private String stock() {
    return one.bath().made() instanceof BathWanted.FromWater made
            && made.concentrate().millilitres() > 0
        ? " with "
            + units.words(made.concentrate())
            + " of stock or concentrate at "
            + units.words(made.has())
        : "";
  }

  private String each() {
    return one.bath().fills() > 1 ? ", for each of " + one.bath().fills() + " fills" : "";
  }

  /** What the drift does, once its time constant was measured. */
  String forecast(double keepsMinutes) {
    if (one.atPour().isEmpty()) {
      return "";
    }
    String atPour =
        "Made before the first pour it has "
            + units.words(one.atPour().get())
            + " when it is poured, after "
            + TimeWords.clock(one.bath().pouredAfter())
            + (one.bath().band().contains(one.atPour().get())
                ? "; "
                : ", which is out of its band: make it later; ");
    String keeps =
        Double.isInfinite(keepsMinutes)
            ? "it stays in its band."
            : "it stays in its band for " + Math.round(keepsMinutes) + " min.";
    return atPour + keeps + byItself();
  }

  private String byItself() {
    if (one.way() == BathTempered.Way.AS_IT_COMES || one.byItself().isEmpty()) {
      return "";
    }
    return one.byItself().get() instanceof TimeInBand.Inside inside
        ? " Left alone it comes into its band after "
            + Math.round(TimeSpan.toSeconds(inside.from()) / 60)
            + " min."
        : " Left alone it never comes into its band.";
  }
}
