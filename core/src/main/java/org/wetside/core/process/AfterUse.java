package org.wetside.core.process;

import java.util.Optional;

/**
 * Where the liquid of a step goes when it is drained.
 *
 * @param bottle letter of the bottle it goes back to; empty when it is discarded
 */
public record AfterUse(Optional<String> bottle) {
  /** Poured away (as local rules say). */
  public static AfterUse discard() {
    return new AfterUse(Optional.empty());
  }

  /** Back to a bottle, by its letter. */
  public static AfterUse backTo(String letter) {
    return new AfterUse(Optional.of(letter.strip()));
  }

  /** {@code discard} or {@code back to bottle F}. */
  public String words() {
    return bottle.map(letter -> "back to bottle " + letter).orElse("discard");
  }
}
