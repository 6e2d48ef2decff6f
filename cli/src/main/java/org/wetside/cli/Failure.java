package org.wetside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.wetside.app.CannotDoException;
import org.wetside.app.NoAnswerException;
import org.wetside.core.quantity.BadValueException;

/**
 * What went wrong, in one sentence for the person and one number for the shell. The only place
 * where exceptions become text, so no stack trace ever reaches a terminal.
 *
 * @param exitCode one of {@link ExitCode}
 * @param message shown on standard error
 */
record Failure(int exitCode, String message) {
  /** The failure that an exception means. */
  static Failure of(Throwable thrown) {
    if (thrown instanceof ServerRefusalException refusal) {
      return new Failure(refusal.exitCode(), sentence(refusal));
    }
    if (thrown instanceof NoAnswerException) {
      return new Failure(ExitCode.NO_ANSWER, sentence(thrown));
    }
    if (thrown instanceof BadValueException) {
      return new Failure(ExitCode.WRONG_INPUT, sentence(thrown));
    }
    if (thrown instanceof CannotDoException) {
      return new Failure(ExitCode.NOT_DONE, sentence(thrown));
    }
    if (thrown instanceof UncheckedIOException unchecked) {
      IOException cause = Objects.requireNonNull(unchecked.getCause());
      boolean worded = !sentence(unchecked).equals(String.valueOf(cause));
      return worded ? new Failure(ExitCode.NOT_DONE, sentence(unchecked)) : ofDisk(cause);
    }
    if (thrown instanceof IOException disk) {
      return ofDisk(disk);
    }
    return new Failure(
        ExitCode.NOT_DONE,
        "could not be done: "
            + sentence(thrown)
            + " ("
            + thrown.getClass().getSimpleName()
            + "). This is a fault of the program; WETSIDE_TRACE=1 shows where.");
  }

  private static Failure ofDisk(IOException thrown) {
    String kind = thrown.getClass().getSimpleName();
    String said = sentence(thrown);
    String reason =
        switch (kind) {
          case "NoSuchFileException", "FileNotFoundException" -> "no such file: " + said;
          case "AccessDeniedException" -> "not allowed by the system: " + said;
          case "FileAlreadyExistsException" -> "already there: " + said;
          case "NotDirectoryException" -> "not a folder: " + said;
          default -> "could not read or write: " + said;
        };
    return new Failure(ExitCode.NOT_DONE, reason);
  }

  private static String sentence(Throwable thrown) {
    String message = thrown.getMessage();
    return message == null ? thrown.getClass().getSimpleName() : message;
  }
}
