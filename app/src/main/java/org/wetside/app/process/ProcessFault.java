package org.wetside.app.process;

/**
 * What is wrong with a process as it was typed.
 *
 * @param step number of the step, from 1; 0 when it concerns the process as a whole
 * @param field name of the field: a {@link StepField#word}; of the process itself its short name,
 *     name, about or steps
 * @param message the thing, the value, the unit and the limit
 */
public record ProcessFault(int step, String field, String message) {
  /** With the step it is about in front. */
  public String words() {
    return step == 0 ? message : "step " + step + ", " + field + ": " + message;
  }
}
