package org.wetside.web.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.MarkSeen;
import org.wetside.reference.Mishaps;

/**
 * What mishaps wrote on a bottle and a person has to decide.
 *
 * @param marks in a sentence each; empty when nothing is open
 * @param advice what is known of such bottles; may be empty
 * @param standing how that is known
 */
public record DecideView(List<String> marks, String advice, String standing) {
  /** Of a bottle as it stands. */
  static DecideView of(Bottle bottle) {
    List<MarkSeen> open = bottle.state().marks();
    Optional<MishapAdvice> known =
        bottle.state().marked(BottleMark.DO_NOT_USE)
            ? Mishaps.all().stream()
                .filter(mishap -> mishap.what().equals(MishapAdvice.WRONG_BOTTLE))
                .findFirst()
            : Optional.empty();
    return new DecideView(
        open.stream().map(DecideView::sentence).distinct().toList(),
        known.map(mishap -> capital(mishap.afterwards()) + ".").orElse(""),
        known.map(mishap -> mishap.standing().word()).orElse(""));
  }

  private static String sentence(MarkSeen seen) {
    return capital(seen.mark().word())
        + ": "
        + seen.why()
        + (seen.run().isEmpty() ? "." : " (run " + seen.run() + ").");
  }

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
