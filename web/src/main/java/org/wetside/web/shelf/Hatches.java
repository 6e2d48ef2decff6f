package org.wetside.web.shelf;

import org.wetside.core.bath.BathKind;

/** Which hatch of the style sheet belongs to which bath. */
public final class Hatches {
  private Hatches() {}

  /** The value of {@code data-bath} and the name of the pattern. */
  public static String of(BathKind bath) {
    return switch (bath) {
      case DEVELOPER, REPLENISHER -> "developer";
      case STOP_BATH -> "stop";
      case FIXER -> "fixer";
      case WASH_AID -> "washaid";
      case FINAL_RINSE -> "final";
      case BLEACH -> "bleach";
      case BLEACH_FIX -> "bleachfix";
      case CLEARING_BATH -> "reversal";
      case CONDITIONER -> "conditioner";
      case STABILISER -> "stabiliser";
      case HARDENER -> "hardener";
    };
  }
}
