package org.wetside.app.process;

import java.util.Optional;

/** What is said of a step, in the order in which it is asked. */
public enum StepField {
  /** What it does to the film. */
  KIND("kind"),
  /** Letter of the bottle; empty for water and light. */
  BOTTLE("bottle"),
  /** How long; empty when the load says it. */
  TIME("time"),
  /** The band the bath may have. */
  TEMPERATURE("temperature"),
  /** When the tank is moved ({@link org.wetside.core.process.AgitationText}). */
  AGITATION("agitation"),
  /** Where the liquid goes: {@code discard}, {@code back}, {@code back to bottle F}. */
  AFTERWARDS("afterwards"),
  /** What light the film may see. */
  LIGHT("light"),
  /** From the beginning of the pour to tank full. */
  POUR_IN("pour-in"),
  /** How long before the next pour the drain begins. */
  DRAIN("drain"),
  /** The longest it may last; empty for the rule of its kind. */
  LONGEST("longest"),
  /** What its values are cited from. */
  SOURCE("source");

  private final String word;

  StepField(String word) {
    this.word = word;
  }

  /** Its name in files, forms and messages. */
  public String word() {
    return word;
  }

  /** The field of that name. */
  static Optional<StepField> of(String word) {
    for (StepField field : values()) {
      if (field.word.equals(word)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }
}
