package org.wetside.cli;

/** What the program tells the shell when it ends. */
public final class ExitCode {
  /** Done. */
  public static final int DONE = 0;

  /** There is no honest answer; standard error says the limit and what would help. */
  public static final int NO_ANSWER = 1;

  /** Wrong usage or input; standard error says what was given and what would be accepted. */
  public static final int WRONG_INPUT = 2;

  /** It could not be done: disk, lock, a newer database, a port in use. */
  public static final int NOT_DONE = 3;

  private ExitCode() {}
}
