package org.wetside.app.density;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;

/** Rectangles of a picture as lines {@code label,x,y,width,height}, in pixels from upper left. */
public final class PatchLines {
  private static final String HEADER = "label,x,y,width,height";
  private static final int CELLS = 5;

  /** More would be a picture, not patches. */
  private static final int MOST = 200;

  private PatchLines() {}

  /**
   * Reads them whole or not at all.
   *
   * @throws BadValueException naming every bad line, a label that comes twice, or too many
   */
  public static List<PatchRectangle> parse(String text) {
    return checked(new Lines("patches", Set.of(HEADER)).read(text, PatchLines::patch));
  }

  /**
   * The same patches, each label once.
   *
   * @throws BadValueException when there is none, one comes twice, or there are too many
   */
  public static List<PatchRectangle> checked(List<PatchRectangle> patches) {
    if (patches.isEmpty() || patches.size() > MOST) {
      throw new BadValueException("patches", patches.size() + "", "1 to " + MOST);
    }
    Set<String> labels = new HashSet<>();
    for (PatchRectangle patch : patches) {
      if (!labels.add(patch.label().toLowerCase(Locale.ROOT))) {
        throw new BadValueException("label of the patch", patch.label(), "each label once");
      }
    }
    return List.copyOf(patches);
  }

  /** One patch from its five cells as typed. */
  public static PatchRectangle patch(String[] cells) {
    if (cells.length != CELLS) {
      throw new BadValueException(
          "patch", String.join(",", cells), "five cells: " + HEADER + ", in pixels");
    }
    String label = cells[0].strip();
    return new PatchRectangle(
        label,
        TypedNumber.pixels("left of patch " + label, cells[1]),
        TypedNumber.pixels("top of patch " + label, cells[2]),
        TypedNumber.pixels("width of patch " + label, cells[3]),
        TypedNumber.pixels("height of patch " + label, cells[4]));
  }

  /** The lines again, with their header. */
  public static String text(List<PatchRectangle> patches) {
    return patches.stream()
        .map(
            one ->
                one.label()
                    + ","
                    + one.x()
                    + ","
                    + one.y()
                    + ","
                    + one.width()
                    + ","
                    + one.height())
        .collect(Collectors.joining("\n", HEADER + "\n", "\n"));
  }
}
