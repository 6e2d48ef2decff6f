package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.app.density.StoredPicture;
import org.wetside.app.picture.PictureFacts;

/**
 * A picture kept in the home.
 *
 * @param name of its file
 * @param widthPixels null when it cannot be measured
 * @param heightPixels null when it cannot be measured
 * @param channels 1 for grey, 3 for red, green and blue; null when it cannot be measured
 * @param linear what the file says of how its values follow the light
 * @param declaredLinear whether somebody says that it is linear
 * @param notMeasurable why it cannot be measured; null when it can
 */
public record PictureView(
    String name,
    @Nullable Integer widthPixels,
    @Nullable Integer heightPixels,
    @Nullable Integer channels,
    String linear,
    boolean declaredLinear,
    @Nullable String notMeasurable) {
  /** The view of a picture. */
  public static PictureView of(StoredPicture picture) {
    return new PictureView(
        picture.name(),
        picture.facts().map(PictureFacts::width).orElse(null),
        picture.facts().map(PictureFacts::height).orElse(null),
        picture.facts().map(PictureFacts::channels).orElse(null),
        picture.facts().map(facts -> facts.encoding().says()).orElse(""),
        picture.declaredLinear(),
        picture.reason().isEmpty() ? null : picture.reason());
  }

  /** Where it is. */
  public String path() {
    return DensityAddress.picture(name);
  }
}
