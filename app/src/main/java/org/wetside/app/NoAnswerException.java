package org.wetside.app;

/**
 * There is no honest answer to the question: the message says which limit was met and what would
 * help. Outcomes inside stay sealed types; this is how an outcome without an answer leaves through
 * the edge, where the command line ends with 1 and HTTP with 422.
 */
public final class NoAnswerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** With the whole message: the limit first, then what would help. */
  public NoAnswerException(String message) {
    super(message);
  }
}
