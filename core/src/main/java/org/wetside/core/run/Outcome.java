package org.wetside.core.run;

/** What became of an event that was sent. */
public sealed interface Outcome {
  /** Stored, and the run has moved accordingly. */
  record Applied() implements Outcome {}

  /**
   * Stored, but it moved nothing.
   *
   * @param reason for example "already done by phone at 20:14:35"
   */
  record Noted(String reason) implements Outcome {}

  /**
   * Not stored yet: to be sent again confirmed.
   *
   * @param question what to ask
   */
  record Asks(String question) implements Outcome {}

  /**
   * Not stored.
   *
   * @param reason the state and why
   */
  record Refused(String reason) implements Outcome {}
}
