package org.wetside.web.density;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.picture.Preview;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one picture.
 *
 * @param sheet the sheet
 * @param picture what it is
 * @param rows patches as they are typed
 * @param instruments those that see pixels, by name; and whether each was calibrated
 * @param result null before anything was measured
 */
public record PicturePage(
    Sheet sheet,
    PictureView picture,
    PatchRows rows,
    Map<String, Boolean> instruments,
    @Nullable PatchesView result) {
  private static final int LONGEST_VIEW = Preview.FIRST_LOOK;

  /** Instruments whose calibration can be chosen. */
  public Map<String, String> calibrated() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("", "none: pixel values only");
    instruments.forEach(
        (name, known) -> {
          if (known) {
            words.put(name, name);
          }
        });
    return words;
  }

  /** Kinds of negative. */
  public Map<String, String> negatives() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("silver", "black and white, unstained");
    words.put("stained", "from a staining developer");
    words.put("colour", "colour, or dyes");
    return words;
  }

  /** Pixels across; 1 when unknown. */
  public int width() {
    Integer width = picture.widthPixels();
    return width == null ? 1 : width;
  }

  /** Pixels down; 1 when unknown. */
  public int height() {
    Integer height = picture.heightPixels();
    return height == null ? 1 : height;
  }

  /** Whether it can be measured now. */
  public boolean isReady() {
    return picture.notMeasurable() == null && !wantsDeclaration();
  }

  /** Whether somebody must say first that it is linear. */
  public boolean wantsDeclaration() {
    return picture.linear().contains("says nothing") && !picture.declaredLinear();
  }

  /** The patches to draw. */
  public List<PatchRectangle> patches() {
    return rows.drawable();
  }

  /** Height of a label, in pixels of the picture. */
  public int labelHeight() {
    return Math.max(1, width() / 40);
  }

  /** Address of the view of the whole. */
  public String view() {
    return picture.path()
        + "/view.jpg?x=0&y=0&width="
        + width()
        + "&height="
        + height()
        + "&size="
        + LONGEST_VIEW;
  }

  /** Densities of the result; null without an instrument. */
  public @Nullable DensitiesView densities() {
    return result == null ? null : result.densities();
  }

  /** What was read of a patch. */
  public DensitiesView.@Nullable DensityView density(int patch) {
    DensitiesView densities = densities();
    return densities == null ? null : densities.patches().get(patch);
  }

  /** A density, as it is written. */
  public static String density(double value) {
    return Claim.density(value);
  }

  /** A pixel value, as it is written. */
  public static String pixel(double value) {
    return Claim.pixel(value);
  }
}
