package org.wetside.app.trial;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.TrialKind;
import org.wetside.store.Bottles;
import org.wetside.store.Session;

/** Whether a bottle may be tested that way. */
final class TestedBottle {
  private TestedBottle() {}

  /**
   * The bottle.
   *
   * @throws BadValueException when it is not on the shelf or the test says nothing of its bath
   */
  static Bottle require(Session session, String letter, TrialKind kind) {
    Bottle bottle =
        new Bottles(session)
            .find(letter)
            .orElseThrow(
                () -> new BadValueException("bottle", letter, "no bottle of that letter is there"));
    if (!kind.fits(bottle.label().bath())) {
      String fitting =
          TrialKind.of(bottle.label().bath()).stream()
              .map(TrialKind::word)
              .collect(Collectors.joining(" or "));
      throw new BadValueException(
          "test of bottle " + bottle.label().letter(),
          kind.word(),
          "it says nothing of "
              + bottle.label().bath().word()
              + (fitting.isEmpty()
                  ? "; there is no test of it here"
                  : "; make the " + fitting + " test"));
    }
    return bottle;
  }

  /**
   * What is said of the clip, where the test needs it.
   *
   * @throws BadValueException when it is needed and nothing is said
   */
  static Optional<ClipWish> clip(TrialKind kind, Optional<ClipWish> clip) {
    if (kind != TrialKind.CLEARING) {
      return Optional.empty();
    }
    if (clip.isEmpty()) {
      throw new BadValueException(
          "film of the clip", "", "say the film, and the temperature of the fixer");
    }
    return clip;
  }

  /**
   * Whether a first time can be taken in it.
   *
   * @throws BadValueException when film has been through it since it was mixed
   */
  static void requireFresh(Bottle bottle) {
    double rolls = bottle.state().film().rolls();
    if (rolls > 0) {
      throw new BadValueException(
          "fresh solution of bottle " + bottle.label().letter(),
          String.format(Locale.ROOT, "%.1f rolls since it was mixed", rolls),
          "a first time is taken before the first film; time this clip as one in used solution");
    }
  }

  /** The line of the ledger that a test of a bottle is. */
  static BathTest lineOf(TrialKind kind) {
    return switch (kind) {
      case CLEARING -> BathTest.CLIP;
      case LEADER -> BathTest.LEADER;
      case IODIDE -> BathTest.IODIDE;
      case RESIDUE -> throw new IllegalArgumentException("it is no test of a bottle");
    };
  }
}
