package org.wetside.app.times;

import java.time.Duration;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmMatch;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;

/** An entry as the line it is typed by: reading it again gives the same entry. */
final class OwnText {
  private OwnText() {}

  static OwnLine line(TimeEntry entry, FilmCatalogue films) {
    return new OwnLine(
        film(entry.filmCode(), films),
        entry.developer(),
        entry.dilution() instanceof Dilution.Unknown ? "" : entry.dilution().label(),
        entry.exposureIndex().map(OwnText::index).orElse(""),
        entry.printedTemperature().replace(" °", ""),
        minutes(entry),
        entry.vessel() == Vessel.NOT_STATED ? "" : entry.vessel().word(),
        entry.note().isEmpty() ? entry.agitation().word() : entry.note(),
        entry.contrast(),
        entry.citation().sourceId());
  }

  /** The name when it leads back to this coating, else name and code. */
  private static String film(String code, FilmCatalogue films) {
    return films
        .byCode(code)
        .map(
            film ->
                films.find(film.name()) instanceof FilmMatch.Found found
                        && found.newest().equals(film)
                    ? film.name()
                    : label(film))
        .orElse(code);
  }

  private static String label(Film film) {
    return film.label();
  }

  private static String index(ExposureIndex index) {
    return index.toString().replace("EI ", "");
  }

  static String minutes(TimeEntry entry) {
    return clock(entry.time()) + entry.longest().map(longest -> "-" + clock(longest)).orElse("");
  }

  private static String clock(Duration time) {
    double seconds = time.toMillis() / 1000.0;
    long minutes = (long) (seconds / 60);
    double rest = seconds - minutes * 60;
    String text = rest == Math.rint(rest) ? Long.toString(Math.round(rest)) : Double.toString(rest);
    return minutes + (rest < 10 ? ":0" : ":") + text;
  }

  static TimeEntry withId(TimeEntry entry, String id) {
    return new TimeEntry(
        id,
        entry.filmCode(),
        entry.format(),
        entry.developer(),
        entry.dilution(),
        entry.printedDilution(),
        entry.exposureIndex(),
        entry.temperature(),
        entry.printedTemperature(),
        entry.time(),
        entry.longest(),
        entry.vessel(),
        entry.agitation(),
        entry.contrast(),
        entry.citation(),
        entry.standing(),
        entry.transcribed(),
        entry.note());
  }
}
