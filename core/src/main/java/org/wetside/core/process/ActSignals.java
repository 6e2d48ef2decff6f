package org.wetside.core.process;

import java.util.List;

/**
 * The tone and the screen signal of each act. Low notes: something ends; high notes: hands are
 * wanted; a single short note: go on quietly.
 */
final class ActSignals {
  private static final int LOW = 392;
  private static final int MIDDLE = 587;
  private static final int HIGH = 880;

  private ActSignals() {}

  static Tone tone(Act act) {
    return switch (act) {
      case GET_READY -> Tone.of(MIDDLE, 90, 0, 90, MIDDLE, 90);
      case POUR -> Tone.of(LOW, 150, MIDDLE, 150, HIGH, 300);
      case LIGHT_ON -> Tone.of(HIGH, 150, HIGH, 300);
      case AGITATE -> Tone.of(HIGH, 120, 0, 60, HIGH, 120);
      case TAP -> Tone.of(HIGH, 60);
      case REST -> Tone.of(LOW, 200);
      case READ -> Tone.of(MIDDLE, 80, HIGH, 80);
      case DRAIN -> Tone.of(HIGH, 200, MIDDLE, 200, LOW, 400);
      case RETURN -> Tone.of(LOW, 100, 0, 60, LOW, 100);
      case NEXT_BATH -> Tone.of(MIDDLE, 120);
      case CAP_ONLY -> Tone.of(LOW, 100, HIGH, 60);
      case LID_OFF -> Tone.of(MIDDLE, 150, HIGH, 150, MIDDLE, 150);
      case HANG -> Tone.of(LOW, 150, MIDDLE, 150, HIGH, 150, 0, 80, HIGH, 400);
    };
  }

  /**
   * Ticks before the acts that must not be late; the others may come when they come. Soft and of
   * one pitch, so that none is taken for an act.
   */
  static int countIn(Act act) {
    return switch (act) {
      case POUR, AGITATE, DRAIN, LIGHT_ON -> 3;
      default -> 0;
    };
  }

  /** The ground changes for one second whatever the act; the hand feels which it is. */
  static Signal signal(Act act) {
    return new Signal(
        true,
        1000,
        switch (act) {
          case POUR, LIGHT_ON -> List.of(400);
          case AGITATE -> List.of(120, 80, 120);
          case DRAIN -> List.of(300, 120, 300, 120, 300);
          case LID_OFF, HANG -> List.of(600);
          case CAP_ONLY -> List.of(80, 60, 80, 60, 80);
          case GET_READY, READ, RETURN, NEXT_BATH -> List.of(150);
          case TAP, REST -> List.of(60);
        });
  }
}
