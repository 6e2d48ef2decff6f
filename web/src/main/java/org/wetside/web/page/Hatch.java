package org.wetside.web.page;

import org.wetside.core.process.StepKind;

/** The hatch a bath is drawn with, by the name the style sheet and the patterns know it by. */
public final class Hatch {
  private Hatch() {}

  /** The hatch of a step. */
  public static String of(StepKind kind) {
    return switch (kind) {
      case PRE_SOAK -> "presoak";
      case DEVELOPER, TWO_BATH_A, TWO_BATH_B, MONOBATH, FIRST_DEVELOPER, SECOND_DEVELOPER ->
          "developer";
      case STOP_BATH -> "stop";
      case FIXER -> "fixer";
      case RINSE -> "rinse";
      case WASH_AID, CLEARING_BATH -> "washaid";
      case WASH -> "wash";
      case FINAL_RINSE -> "final";
      case RE_EXPOSURE -> "reversal";
      case BLEACH -> "bleach";
      case BLEACH_FIX -> "bleachfix";
      case CONDITIONER -> "conditioner";
      case STABILISER -> "stabiliser";
      case HARDENER -> "hardener";
    };
  }
}
