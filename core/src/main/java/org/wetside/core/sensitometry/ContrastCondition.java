package org.wetside.core.sensitometry;

import java.util.Optional;

/**
 * Whether a curve has the contrast that ISO 6 asks for before its speed may be called ISO: 0.75 ≤
 * ΔD ≤ 0.85 (the tolerance from memory).
 */
public enum ContrastCondition {
  /** ΔD and its whole band lie within the limits. */
  MET("met"),
  /** ΔD lies within the limits; its band crosses one, or is not determinable. */
  MET_NOT_CERTAIN("met, not certain"),
  /** ΔD lies outside the limits. */
  NOT_MET("not met"),
  /** The curve does not reach 1.30 beyond the speed point. */
  NOT_DETERMINABLE("not determinable");

  /** Least and greatest ΔD [-]. */
  public static final Interval LIMITS = new Interval(0.75, 0.85);

  private final String word;

  ContrastCondition(String word) {
    this.word = word;
  }

  /** The word shown. */
  public String word() {
    return word;
  }

  /** Whether a speed may be called ISO. */
  public boolean isMet() {
    return this == MET || this == MET_NOT_CERTAIN;
  }

  static ContrastCondition of(CurveResult deltaD) {
    if (deltaD.value().isEmpty()) {
      return NOT_DETERMINABLE;
    }
    if (!LIMITS.holds(deltaD.value().getAsDouble())) {
      return NOT_MET;
    }
    Optional<Interval> band = deltaD.band();
    boolean certain =
        band.isPresent() && LIMITS.holds(band.get().low()) && LIMITS.holds(band.get().high());
    return certain ? MET : MET_NOT_CERTAIN;
  }
}
