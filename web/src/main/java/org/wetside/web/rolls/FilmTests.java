package org.wetside.web.rolls;

import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.Units;
import org.wetside.web.trial.FilmTestView;

/** What tests say of a roll, for its page and its view. */
public final class FilmTests {
  private FilmTests() {}

  /** Those that are over, of its washing first, each sort the newest first. */
  public static List<FilmTestView> of(Wetside wetside, String number, Units units) {
    return wetside.bathTests().findTests().ofRoll(number).stream()
        .map(trial -> FilmTestView.of(trial, units))
        .flatMap(Optional::stream)
        .toList();
  }
}
