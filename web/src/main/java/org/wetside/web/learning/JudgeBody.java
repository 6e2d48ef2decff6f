package org.wetside.web.learning;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.Used;
import org.wetside.core.quantity.BadValueException;

/**
 * What was seen on the negatives of a roll; null is not said.
 *
 * @param edgePrint thinner than usual, as usual, heavier than usual, not to be seen
 * @param shadows empty, weak, good, heavy
 * @param contrast flat, a little flat, right, a little hard, hard
 * @param baseFogDensity density of clear film beside the reference pair
 * @param shadowDensity density of the frame four stops under
 * @param lightDensity density of the frame two stops over
 * @param water the water the developer was mixed with
 * @param thermometer the thermometer; as the record of the run says when nothing is said of the
 *     three
 * @param batch the bottle of developer and its batch
 */
public record JudgeBody(
    @Nullable String edgePrint,
    @Nullable String shadows,
    @Nullable String contrast,
    @Nullable Double baseFogDensity,
    @Nullable Double shadowDensity,
    @Nullable Double lightDensity,
    @Nullable String water,
    @Nullable String thermometer,
    @Nullable String batch) {
  /**
   * What was seen.
   *
   * @throws BadValueException when a word is not known, a density cannot be, or nothing was said
   */
  public Seen seen() {
    return new Seen(
        said(edgePrint).map(EdgePrint::parse).orElse(EdgePrint.NONE),
        said(shadows).map(ShadowWord::parse),
        said(contrast).map(ContrastWord::parse),
        pair());
  }

  private Optional<ReferencePair> pair() {
    if (shadowDensity == null && lightDensity == null) {
      if (baseFogDensity != null) {
        throw new BadValueException(
            "base plus fog", baseFogDensity.toString(), "give the densities of both frames too");
      }
      return Optional.empty();
    }
    if (shadowDensity == null || lightDensity == null) {
      throw new BadValueException(
          shadowDensity == null ? "density four stops under" : "density two stops over",
          "",
          "the pair needs both densities");
    }
    return Optional.of(
        new ReferencePair(Optional.ofNullable(baseFogDensity), shadowDensity, lightDensity));
  }

  /** What was used; empty when nothing was said of it. */
  public Optional<Used> used() {
    return water == null && thermometer == null && batch == null
        ? Optional.empty()
        : Optional.of(
            new Used(said(water).orElse(""), said(thermometer).orElse(""), said(batch).orElse("")));
  }

  private static Optional<String> said(@Nullable String text) {
    return text == null || text.isBlank() ? Optional.empty() : Optional.of(text.strip());
  }
}
