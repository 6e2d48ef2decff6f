package org.wetside.cli;

/** The running server answered with a problem; it means the same as the exception would here. */
final class ServerRefusalException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  ServerRefusalException(int exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  /** One of {@link ExitCode}. */
  int exitCode() {
    return exitCode;
  }
}
