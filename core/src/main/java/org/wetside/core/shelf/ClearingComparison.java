package org.wetside.core.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A clearing time beside that of the fresh solution. Only times of the same film, dilution and
 * temperature within 1 K are compared.
 */
public sealed interface ClearingComparison {
  /** A fixer is spent when clearing takes this many times as long (CH-S01, CH-S32). */
  double SPENT_AT = 2;

  /** How far two temperatures may lie apart, in kelvins. */
  double SAME_WITHIN_K = 1;

  /**
   * They can be compared.
   *
   * @param ratio the later one over the fresh one, dimensionless
   */
  record Compared(double ratio) implements ClearingComparison {
    /** Whether clearing has doubled. */
    public boolean spent() {
      return ratio >= SPENT_AT;
    }
  }

  /**
   * They cannot: make a baseline.
   *
   * @param why what differs, in words
   */
  record NotComparable(List<String> why) implements ClearingComparison {
    public NotComparable {
      why = List.copyOf(why);
    }
  }

  /** No clearing time was taken, or only that of the fresh solution. */
  record Nothing() implements ClearingComparison {}

  /** The last clearing time of a bottle beside its baseline. */
  static ClearingComparison of(BottleState state) {
    Optional<Clearing> last = state.clearing().flatMap(test -> test.what().clearing());
    if (last.isEmpty() || last.get().baseline()) {
      return new Nothing();
    }
    return of(state.baseline().flatMap(test -> test.what().clearing()), last.get());
  }

  /** A clearing time beside a baseline, if there is one. */
  static ClearingComparison of(Optional<Clearing> baseline, Clearing later) {
    if (baseline.isEmpty()) {
      return new NotComparable(List.of("there is no clearing time of the fresh solution"));
    }
    Clearing fresh = baseline.get();
    List<String> why = new ArrayList<>();
    if (!fresh.film().equalsIgnoreCase(later.film())) {
      why.add("another film: " + fresh.film() + " then, " + later.film() + " now");
    }
    if (!fresh.dilution().equalsIgnoreCase(later.dilution())) {
      why.add("another dilution: " + fresh.dilution() + " then, " + later.dilution() + " now");
    }
    double apart = Math.abs(fresh.temperature().celsius() - later.temperature().celsius());
    if (apart > SAME_WITHIN_K + 1e-9) {
      why.add(
          "another temperature: " + fresh.temperature() + " then, " + later.temperature() + " now");
    }
    return why.isEmpty() ? new Compared(later.seconds() / fresh.seconds()) : new NotComparable(why);
  }
}
