package org.wetside.app.density;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.app.home.Home;
import org.wetside.core.quantity.BadValueException;

/** The folder of pictures in a home: plain files, so that any program opens them. */
final class PictureFolder {
  private static final int LONGEST = 120;

  private final Path folder;

  PictureFolder(Home home) {
    folder = home.pictures();
  }

  /** Names of the TIFF files in it, in order. */
  List<String> names() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> String.valueOf(file.getFileName()))
          .filter(PictureFolder::isOne)
          .sorted()
          .toList();
    } catch (IOException failure) {
      throw new UncheckedIOException("reading " + folder + ": " + failure, failure);
    }
  }

  /** The file of that name, when it is there. */
  Optional<Path> find(String name) {
    if (!isOne(name)) {
      return Optional.empty();
    }
    Path file = folder.resolve(name);
    return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
  }

  /**
   * Where a picture of that name goes.
   *
   * @throws BadValueException when it is no name for one, or is taken
   */
  Path free(String name) {
    String bare = name.replaceAll(".*[/\\\\]", "").strip();
    if (!isOne(bare)) {
      throw new BadValueException(
          "name of the picture",
          name,
          "a file name of at most " + LONGEST + " characters that ends in .tif or .tiff");
    }
    if (find(bare).isPresent()) {
      throw new BadValueException(
          "name of the picture",
          bare,
          "there is one of that name in the home; take it away first, or rename yours");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException failure) {
      throw new UncheckedIOException("making " + folder + ": " + failure, failure);
    }
    return folder.resolve(bare);
  }

  /** Changes when the file does. */
  static String mark(Path file) {
    try {
      return Files.size(file) + " " + Files.getLastModifiedTime(file).toMillis();
    } catch (IOException failure) {
      throw new UncheckedIOException("reading " + file + ": " + failure, failure);
    }
  }

  private static boolean isOne(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return name.length() <= LONGEST
        && !name.startsWith(".")
        && name.chars().noneMatch(one -> one == '/' || one == '\\' || Character.isISOControl(one))
        && (lower.endsWith(".tif") || lower.endsWith(".tiff"));
  }
}
