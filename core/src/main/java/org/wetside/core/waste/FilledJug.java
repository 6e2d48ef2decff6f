package org.wetside.core.waste;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A jug as its book tells it.
 *
 * @param jug the jug
 * @param inside what was poured in since it was last empty, oldest first
 * @param handedIn every time it was handed in, oldest first
 */
public record FilledJug(Jug jug, List<Poured> inside, List<HandedIn> handedIn) {
  /** Keeps unmodifiable copies. */
  public FilledJug {
    inside = List.copyOf(inside);
    handedIn = List.copyOf(handedIn);
  }

  /** How much is in it. */
  public Volume filled() {
    return inside.stream().map(Poured::volume).reduce(Volume.ZERO, Volume::plus);
  }

  /** How much more it takes. */
  public Volume room() {
    Volume filled = filled();
    return filled.compareTo(jug.holds()) >= 0 ? Volume.ZERO : jug.holds().minus(filled);
  }

  /**
   * Refuses what does not belong into it, or does not fit.
   *
   * @param spoken what is to be poured
   * @throws BadValueException naming both, and the limit
   */
  public void requireTakes(String spoken, Optional<BathKind> bath, Volume volume) {
    if (!jug.kind().takes(bath)) {
      throw new BadValueException(
          "waste",
          spoken + " into " + jug.spoken(),
          jug.spoken()
              + " is for "
              + jug.kind().word()
              + " waste ("
              + jug.kind().takes()
              + "); use one for "
              + WasteKind.of(bath.orElseThrow()).word()
              + " waste");
    }
    if (volume.compareTo(room()) > 0) {
      throw new BadValueException(
          "volume poured in",
          volume.toString(),
          jug.spoken() + " holds " + jug.holds() + " and has " + filled());
    }
  }

  /**
   * Refuses a day it cannot have been handed in.
   *
   * @param on the day
   * @param today the day it is
   * @throws BadValueException when it is empty, or the day is to come or before its last pouring
   */
  public void requireHandInOn(LocalDate on, LocalDate today, ZoneId zone) {
    if (inside.isEmpty()) {
      throw new BadValueException("jug to hand in", jug.name(), "there is nothing in it");
    }
    if (on.isAfter(today)) {
      throw new BadValueException("day of handing in", on.toString(), "not after today, " + today);
    }
    Instant last = inside.get(inside.size() - 1).at();
    LocalDate poured = LocalDate.ofInstant(last, zone);
    if (on.isBefore(poured)) {
      throw new BadValueException(
          "day of handing in", on.toString(), "not before the last pouring, on " + poured);
    }
  }
}
