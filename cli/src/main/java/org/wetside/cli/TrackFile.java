package org.wetside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.wetside.app.sound.Format;
import org.wetside.core.quantity.BadValueException;

/**
 * The file a cue track is written to.
 *
 * @param path where
 * @param format by its ending
 */
record TrackFile(Path path, Format format) {
  /**
   * From its name.
   *
   * @param replace whether a file that is there is written over
   * @throws BadValueException when the ending is unknown, or a file is there that may not be
   *     replaced
   */
  static TrackFile named(String name, boolean replace) {
    Format format = Format.ofFile(name);
    Path path = Path.of(name);
    if (Files.isDirectory(path)) {
      throw new BadValueException("file of the track", name, "a file, not a folder");
    }
    if (Files.exists(path) && !replace) {
      throw new BadValueException(
          "file of the track", name, "there is such a file; --force replaces it");
    }
    return new TrackFile(path, format);
  }

  /** Writes it, whole or not at all. */
  void write(InputStream bytes) {
    try (bytes) {
      Path beside = path.resolveSibling(path.getFileName() + ".part");
      try {
        Files.copy(bytes, beside, StandardCopyOption.REPLACE_EXISTING);
        Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(new IOException("cannot write " + path, e));
    }
  }

  /** Its length, for people. */
  String size() {
    try {
      return Files.size(path) / 1000 + " kB";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
