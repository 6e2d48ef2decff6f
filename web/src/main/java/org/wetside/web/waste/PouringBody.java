package org.wetside.web.waste;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.waste.PourWaste;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.waste.FilledJug;

/**
 * A pouring, from a bottle of the shelf or by hand.
 *
 * @param bottle letter of the bottle; null when poured by hand
 * @param contents what it is; only by hand
 * @param bath what it did to film; null for what is no bath, such as wash water
 * @param volumeMl how much; null for all of a bottle, which is then discarded
 * @param note anything else
 */
public record PouringBody(
    @Nullable String bottle,
    @Nullable String contents,
    @Nullable String bath,
    @Nullable Double volumeMl,
    @Nullable String note) {

  /**
   * Does it.
   *
   * @throws BadValueException naming both things and the reason, or the part and its limit
   */
  public FilledJug to(PourWaste pour, String jug) {
    Optional<Volume> volume = Optional.ofNullable(volumeMl).map(Volume::ofMillilitres);
    String words = note == null ? "" : note;
    if (bottle != null && !bottle.isBlank()) {
      if (contents != null && !contents.isBlank()) {
        throw new BadValueException(
            "what is poured in", contents, "from bottle " + bottle + " or by hand, not both");
      }
      return pour.fromBottle(jug, bottle, volume, words).jug();
    }
    if (volume.isEmpty()) {
      throw new BadValueException("volume poured in", "nothing", "say how much it is");
    }
    Optional<BathKind> kind =
        bath == null || bath.isBlank() ? Optional.empty() : Optional.of(BathKind.fromWord(bath));
    return pour.byHand(
            jug, new PourWaste.ByHand(contents == null ? "" : contents, kind, volume.get(), words))
        .jug();
  }
}
