package org.wetside.web.density;

import java.util.List;
import org.wetside.app.density.KeepPictures;

/**
 * The pictures kept in the home.
 *
 * @param pictures by name
 */
public record PicturesView(List<PictureView> pictures) {
  /** All of a home. */
  public static PicturesView of(KeepPictures pictures) {
    return new PicturesView(pictures.all().stream().map(PictureView::of).toList());
  }
}
