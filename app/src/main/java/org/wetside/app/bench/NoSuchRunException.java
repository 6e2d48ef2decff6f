package org.wetside.app.bench;

/** There is no run of that number. */
public final class NoSuchRunException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  NoSuchRunException(long run) {
    super("there is no run " + run);
  }
}
