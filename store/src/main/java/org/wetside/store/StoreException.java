package org.wetside.store;

import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * The database could not do what was asked: disk, lock, damage, or a database newer than the
 * program. Like every {@link UncheckedIOException} it reaches people as "could not be done".
 */
public final class StoreException extends UncheckedIOException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message what happened, what was kept and what to do
   */
  public StoreException(String message) {
    super(message, new IOException(message));
  }

  /**
   * @param message what was being done
   * @param cause what the database said
   */
  public StoreException(String message, Exception cause) {
    super(message + ": " + cause.getMessage(), new IOException(cause));
  }

  private StoreException(IOException whole) {
    super(whole.getMessage(), whole);
  }

  /** With the whole message; what the cause says is in it already. */
  static StoreException saying(String message, Exception cause) {
    return new StoreException(new IOException(message, cause));
  }
}
