package org.wetside.web.api;

/**
 * The one shape of an error under {@code /api} (RFC 9457), which the command line turns into its
 * exit code.
 *
 * @param title what kind of thing went wrong, the same words for every case of it
 * @param detail the sentence for the person: thing, value, unit, limit
 * @param status HTTP status
 * @param exitCode 1 no honest answer, 2 bad input, 3 could not be done
 */
public record Problem(String title, String detail, int status, int exitCode) {
  /** Media type of the answer. */
  public static final String MEDIA_TYPE = "application/problem+json";

  private static final int BAD_REQUEST = 400;
  private static final int NOT_FOUND = 404;
  private static final int CONFLICT = 409;
  private static final int UNPROCESSABLE = 422;
  private static final int SERVER_ERROR = 500;

  /** There is no honest answer; the detail says what would help. */
  public static Problem noAnswer(String detail) {
    return new Problem("no honest answer", detail, UNPROCESSABLE, 1);
  }

  /** What was given cannot be accepted. */
  public static Problem badInput(String detail) {
    return new Problem("refused", detail, BAD_REQUEST, 2);
  }

  /** What was asked for is not there. */
  public static Problem notFound(String detail) {
    return new Problem("not found", detail, NOT_FOUND, 2);
  }

  /** It cannot be done in the state things are in. */
  public static Problem conflict(String detail) {
    return new Problem("not now", detail, CONFLICT, 2);
  }

  /** The wish is clear, but disk, lock or state do not allow it. */
  public static Problem cannotDo(String detail) {
    return new Problem("could not be done", detail, CONFLICT, 3);
  }

  /** Something inside failed although it was asked for properly. */
  public static Problem couldNot(String detail) {
    return new Problem("could not be done", detail, SERVER_ERROR, 3);
  }
}
