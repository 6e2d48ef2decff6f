package org.wetside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/** The text of a table that a command is given. */
final class CsvFile {
  private CsvFile() {}

  static String text(@Nullable Path file, String columns) {
    if (file == null) {
      throw new BadValueException("file", "nothing", "give a CSV with the columns " + columns);
    }
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
