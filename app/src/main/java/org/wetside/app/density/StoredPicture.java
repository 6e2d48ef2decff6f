package org.wetside.app.density;

import java.util.List;
import java.util.Optional;
import org.wetside.app.picture.PictureFacts;
import org.wetside.core.instrument.PatchRectangle;

/**
 * A picture kept in the home.
 *
 * @param name of its file
 * @param facts what it says of itself; empty when it cannot be measured
 * @param reason why it cannot; empty when it can
 * @param declaredLinear whether somebody says that its values are proportional to the light
 * @param patches those last drawn on it
 */
public record StoredPicture(
    String name,
    Optional<PictureFacts> facts,
    String reason,
    boolean declaredLinear,
    List<PatchRectangle> patches) {
  /** Keeps an unmodifiable copy. */
  public StoredPicture {
    patches = List.copyOf(patches);
  }

  /** Whether somebody has to say that it is linear before it is measured. */
  public boolean wantsDeclaration() {
    return facts.filter(PictureFacts::wantsDeclaration).isPresent() && !declaredLinear;
  }
}
