package org.wetside.core.instrument;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;

/**
 * A rectangle of pixels to be measured.
 *
 * @param label what it is called, for example the step
 * @param x pixels from the left edge of the picture to its left edge
 * @param y pixels from the upper edge of the picture to its upper edge
 * @param width in pixels, at least 1
 * @param height in pixels, at least 1
 */
public record PatchRectangle(String label, int x, int y, int width, int height) {
  /** Part of a step that is left out at each of its ends: a judgement. */
  private static final double MARGIN = 0.2;

  /** Takes blanks around the label away. */
  public PatchRectangle {
    label = ThingName.requireLabel(label, "label of the patch");
    requireAtLeast(x, 0, "left", label);
    requireAtLeast(y, 0, "top", label);
    requireAtLeast(width, 1, "width", label);
    requireAtLeast(height, 1, "height", label);
  }

  private static void requireAtLeast(int value, int least, String what, String label) {
    if (value < least) {
      throw new BadValueException(
          what + " of patch " + label, value + " pixels", "at least " + least + " pixels");
    }
  }

  /**
   * Makes sure that it lies inside a picture.
   *
   * @throws BadValueException naming the size of the picture
   */
  public PatchRectangle inside(int pictureWidth, int pictureHeight) {
    if ((long) x + width > pictureWidth || (long) y + height > pictureHeight) {
      throw new BadValueException(
          "patch " + label,
          x + "," + y + " " + width + "×" + height,
          "it leaves the picture of " + pictureWidth + "×" + pictureHeight + " pixels");
    }
    return this;
  }

  /**
   * Divides it along its longer side into equal steps and leaves the outer part of each out, where
   * neighbours shine in.
   *
   * @param count 2 to 60
   * @param from label of the first; the others count on
   * @return in order from left to right, or from top to bottom
   */
  public List<PatchRectangle> divided(int count, int from) {
    if (count < 2 || count > 60) {
      throw new BadValueException("number of steps", count + "", "2 to 60");
    }
    boolean lying = width >= height;
    double each = (double) (lying ? width : height) / count;
    if (each < 4) {
      throw new BadValueException(
          "number of steps", count + "", "each would be thinner than 4 pixels");
    }
    List<PatchRectangle> steps = new ArrayList<>();
    int along = Math.max(1, (int) (each * (1 - 2 * MARGIN)));
    for (int i = 0; i < count; i++) {
      int offset = (int) Math.round(each * (i + MARGIN));
      String name = String.valueOf(from + i);
      steps.add(
          lying
              ? new PatchRectangle(name, x + offset, y, along, height)
              : new PatchRectangle(name, x, y + offset, width, along));
    }
    return steps;
  }
}
