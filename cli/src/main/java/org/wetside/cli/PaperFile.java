package org.wetside.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/** Where a command writes a paper, checked before anything is asked. */
record PaperFile(Path path) {
  /**
   * The file that was named; empty when none was.
   *
   * @param thing what it is, for messages
   * @throws BadValueException when it is a folder, or is there and not to be replaced
   */
  static Optional<PaperFile> of(String thing, @Nullable String name, boolean force) {
    if (name == null) {
      return Optional.empty();
    }
    Path path = Path.of(name);
    if (Files.isDirectory(path)) {
      throw new BadValueException(thing, name, "a file, not a folder");
    }
    if (Files.exists(path) && !force) {
      throw new BadValueException(thing, name, "there is such a file; --force replaces it");
    }
    return Optional.of(new PaperFile(path));
  }

  void write(byte[] bytes) {
    write(new ByteArrayInputStream(bytes));
  }

  /** Whole or not at all. */
  void write(InputStream bytes) {
    try (bytes) {
      Path beside = path.resolveSibling(path.getFileName() + ".part");
      try {
        Files.copy(bytes, beside, StandardCopyOption.REPLACE_EXISTING);
        Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(new IOException("cannot write " + path, failed));
    }
  }
}
