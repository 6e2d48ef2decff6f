package org.wetside.app.picture;

import org.wetside.core.quantity.BadValueException;

/**
 * What a TIFF file says of itself; only those that can be measured have facts.
 *
 * @param name of the file
 * @param width pixels
 * @param height pixels
 * @param channels 1 (grey) or 3 (red, green, blue)
 * @param images how many the file holds; the first is measured
 * @param encoding how its values follow the light, as far as it says
 */
public record PictureFacts(
    String name, int width, int height, int channels, int images, Encoding encoding) {

  /** Whether somebody has to say that it is linear. */
  public boolean wantsDeclaration() {
    return encoding.kind() == Encoding.Kind.SILENT;
  }

  /**
   * Makes sure that its values may be taken for light.
   *
   * @param declaredLinear whether whoever made it says that it is linear
   * @throws BadValueException when it is not, or nobody says so
   */
  public PictureFacts requireLinear(boolean declaredLinear) {
    if (wantsDeclaration() && !declaredLinear) {
      throw new BadValueException(
          "picture",
          name,
          encoding.says()
              + ": measure it only if you scanned it linear (gamma 1.0, no curve, no automatic"
              + " exposure, no sharpening), and say so");
    }
    return this;
  }
}
