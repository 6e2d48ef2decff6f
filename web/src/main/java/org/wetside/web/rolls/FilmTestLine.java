package org.wetside.web.rolls;

import java.time.Instant;
import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.Units;
import org.wetside.web.trial.FilmTestView;

/**
 * A test that speaks for or against a roll, as its page shows it.
 *
 * @param day when it was judged
 * @param view what it says
 */
public record FilmTestLine(String day, FilmTestView view) {
  /** All there are of a roll. */
  public static List<FilmTestLine> of(Wetside wetside, String number, Units units) {
    Days days = Days.of(wetside.clock());
    return FilmTests.of(wetside, number, units).stream()
        .map(view -> new FilmTestLine(days.day(Instant.parse(view.endedAt())), view))
        .toList();
  }
}
