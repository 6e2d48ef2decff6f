package org.wetside.app;

/**
 * The wish is clear but it could not be done: disk, lock, a newer database, a port in use. The
 * command line ends with 3 and HTTP with 409 or 500. The message says what was kept and what to do.
 */
public class CannotDoException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** With the whole message. */
  public CannotDoException(String message) {
    super(message);
  }

  /** With the whole message and what lay behind it. */
  public CannotDoException(String message, Throwable cause) {
    super(message, cause);
  }
}
