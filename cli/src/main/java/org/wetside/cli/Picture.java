package org.wetside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.PatchLines;
import org.wetside.app.density.ReadPatches;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.quantity.BadValueException;

/** A picture and its rectangles as a command names them. */
final class Picture {
  private Picture() {}

  /** What its patches hold. */
  static List<PatchMeasure> measured(
      @Nullable Path picture, @Nullable Path rectangles, boolean linear) {
    if (picture == null || rectangles == null) {
      throw new BadValueException(
          picture == null ? "picture" : "rectangles",
          "nothing",
          "name the TIFF, and with --rectangles a file of lines label,x,y,width,height");
    }
    if (!Files.isRegularFile(picture)) {
      throw new BadValueException("picture", picture.toString(), "there is no such file");
    }
    return ReadPatches.ofFile(picture, linear, PatchLines.parse(text(rectangles)));
  }

  /** A file of lines. */
  static String text(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new BadValueException("file", file.toString(), "there is no such file");
    }
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("reading " + file + ": " + unreadable, unreadable);
    }
  }
}
