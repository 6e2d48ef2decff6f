package org.wetside.core.bath;

import java.util.Optional;
import org.wetside.core.quantity.Volume;

/**
 * Whether a tank holds enough stock for its film: {@link Enough}, {@link TooLittle} or {@link
 * MinimumUnknown}, which is an open check and never a passed one.
 */
public sealed interface StockRequirement
    permits StockRequirement.Enough, StockRequirement.TooLittle, StockRequirement.MinimumUnknown {
  /** Stock or concentrate in the fill. */
  Volume present();

  /** Whether the check is passed; an open one is not. */
  default boolean passed() {
    return this instanceof Enough;
  }

  /** Less than this much short is measuring error, not shortage. */
  double TOLERATED_ML = 1e-6;

  /** At least the minimum. */
  record Enough(Volume present, Volume needed, StockMinimum minimum) implements StockRequirement {}

  /** Less than the minimum. */
  record TooLittle(Volume present, Volume needed, StockMinimum minimum)
      implements StockRequirement {
    /** What is missing. */
    public Volume missing() {
      return needed.minus(present);
    }
  }

  /** The maker's minimum is not on file: enter it from the leaflet. */
  record MinimumUnknown(Volume present) implements StockRequirement {}

  /**
   * Compares what is in the tank with what its film needs.
   *
   * @param present stock or concentrate in the fill
   * @param film all film in the tank
   * @param minimum the maker's, when it is on file
   */
  static StockRequirement check(Volume present, UnitOfUse film, Optional<StockMinimum> minimum) {
    if (minimum.isEmpty()) {
      return new MinimumUnknown(present);
    }
    Volume needed = minimum.get().needFor(film);
    return present.millilitres() + TOLERATED_ML >= needed.millilitres()
        ? new Enough(present, needed, minimum.get())
        : new TooLittle(present, needed, minimum.get());
  }
}
