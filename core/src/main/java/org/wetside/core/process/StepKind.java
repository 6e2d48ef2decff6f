package org.wetside.core.process;

import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;

/** What a step does to the film. */
public enum StepKind {
  PRE_SOAK("pre-soak"),
  DEVELOPER("developer"),
  STOP_BATH("stop bath"),
  FIXER("fixer"),
  RINSE("rinse"),
  WASH_AID("wash aid"),
  WASH("wash"),
  FINAL_RINSE("final rinse"),
  TWO_BATH_A("developer bath A"),
  TWO_BATH_B("developer bath B"),
  MONOBATH("monobath"),
  FIRST_DEVELOPER("first developer"),
  SECOND_DEVELOPER("second developer"),
  CLEARING_BATH("clearing bath"),
  /** Light, not a liquid: nothing is poured and nothing drained. */
  RE_EXPOSURE("re-exposure"),
  BLEACH("bleach"),
  BLEACH_FIX("bleach-fix"),
  CONDITIONER("conditioner"),
  STABILISER("stabiliser"),
  HARDENER("hardener");

  private final String word;

  StepKind(String word) {
    this.word = word;
  }

  /** The word of the trade, shown to people and written to JSON and the database. */
  public String word() {
    return word;
  }

  /** As a sentence begins: {@code Stop bath}. */
  public String heading() {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /**
   * Whether the image grows in it on a clock that nobody may stretch: such a step is never
   * lengthened and never waits.
   */
  public boolean developing() {
    return switch (this) {
      case DEVELOPER, TWO_BATH_A, FIRST_DEVELOPER, SECOND_DEVELOPER -> true;
      default -> false;
    };
  }

  /** Whether there is liquid in the tank. */
  public boolean wet() {
    return this != RE_EXPOSURE;
  }

  /** Whether it is plain water, which needs no bottle. */
  public boolean water() {
    return this == PRE_SOAK || this == RINSE || this == WASH;
  }

  /** What kind of liquid it takes from a bottle; empty for plain water and for light. */
  public Optional<BathKind> bath() {
    return switch (this) {
      case DEVELOPER, TWO_BATH_A, TWO_BATH_B, MONOBATH, FIRST_DEVELOPER, SECOND_DEVELOPER ->
          Optional.of(BathKind.DEVELOPER);
      case STOP_BATH -> Optional.of(BathKind.STOP_BATH);
      case FIXER -> Optional.of(BathKind.FIXER);
      case WASH_AID -> Optional.of(BathKind.WASH_AID);
      case FINAL_RINSE -> Optional.of(BathKind.FINAL_RINSE);
      case CLEARING_BATH -> Optional.of(BathKind.CLEARING_BATH);
      case BLEACH -> Optional.of(BathKind.BLEACH);
      case BLEACH_FIX -> Optional.of(BathKind.BLEACH_FIX);
      case CONDITIONER -> Optional.of(BathKind.CONDITIONER);
      case STABILISER -> Optional.of(BathKind.STABILISER);
      case HARDENER -> Optional.of(BathKind.HARDENER);
      case PRE_SOAK, RINSE, WASH, RE_EXPOSURE -> Optional.empty();
    };
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static StepKind fromWord(String word) {
    for (StepKind kind : values()) {
      if (kind.word.equalsIgnoreCase(word.strip())) {
        return kind;
      }
    }
    throw new BadValueException("kind of step", word, "choose one of " + words());
  }

  private static String words() {
    StringBuilder list = new StringBuilder();
    for (StepKind kind : values()) {
      list.append(list.isEmpty() ? "" : ", ").append(kind.word);
    }
    return list.toString();
  }
}
