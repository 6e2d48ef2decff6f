package org.wetside.app.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wetside.app.care.BathCare;
import org.wetside.core.safety.Objection;

/**
 * What is to be known of the baths before hands touch them: baths that should not follow one
 * another, then the cautions of each. Where all is on file and nothing speaks against it there is
 * nothing to answer; the cautions stand there all the same.
 */
final class HandlingChecks {
  private HandlingChecks() {}

  static List<Check> of(Pour pour, List<BathCare> care) {
    List<Check> checks = new ArrayList<>();
    for (BathCare bath : care) {
      for (Objection objection : bath.against()) {
        checks.add(
            new Check(
                CheckGroup.HANDLING,
                "handling-order-" + bath.step() + "-" + slug(objection.rule().name()),
                capital(objection.things()) + ": " + objection.rule().hazard(),
                CheckState.WARNING,
                capital(objection.rule().advice())
                    + " ("
                    + objection.rule().citation()
                    + ", "
                    + objection.rule().standing().word()
                    + ").",
                Optional.of(bath.step())));
      }
    }
    Set<String> said = new HashSet<>();
    for (BathCare bath : care) {
      if (said.add(pour.bath(bath.step()))) {
        checks.add(
            new Check(
                CheckGroup.HANDLING,
                "handling-" + bath.step(),
                pour.bath(bath.step()) + ": " + bath.inShort(),
                bath.isOnFile() ? CheckState.DONE : CheckState.OPEN,
                "",
                Optional.of(bath.step())));
      }
    }
    return checks;
  }

  private static String slug(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
