package org.wetside.app.times;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.development.Agitation;
import org.wetside.core.development.Developer;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** Turns a typed line into an entry, or names everything that is wrong with it. */
final class OwnLineReader {
  private static final Pattern DECIMAL_MINUTES = Pattern.compile("\\d+(\\.\\d+)?");
  private static final Pattern RANGE =
      Pattern.compile("\\s*([\\d:.]+)\\s*[-–]\\s*([\\d:.]+)\\s*(?:min)?\\s*");
  private static final Duration LONGEST = Duration.ofHours(24);
  private static final Temperature COLDEST = Temperature.ofCelsius(5);
  private static final Temperature WARMEST = Temperature.ofCelsius(60);

  private final TimeShelf.Now now;
  private final List<RowProblem> problems = new ArrayList<>();
  private int row;

  OwnLineReader(TimeShelf.Now now) {
    this.now = now;
  }

  /**
   * What a line became.
   *
   * @param entry the entry; empty when there are problems
   * @param problems what is wrong, one for each column
   */
  record Reading(Optional<TimeEntry> entry, List<RowProblem> problems) {}

  Reading read(int atRow, OwnLine line) {
    problems.clear();
    row = atRow;
    String film = checked("film", () -> filmCode(line.film())).orElse("");
    Developer developer =
        checked("developer", () -> developer(line.developer()))
            .orElseGet(() -> Developer.ownNamed(""));
    Dilution dilution =
        checked("dilution", () -> developer.resolve(Dilution.parse(line.dilution())))
            .orElseGet(Dilution::notStated);
    Optional<ExposureIndex> index =
        line.ei().isBlank()
            ? Optional.empty()
            : checked("ei", () -> ExposureIndex.parse(line.ei()));
    Optional<Temperature> temperature =
        line.temp().isBlank() ? Optional.empty() : checked("temp", () -> temperature(line.temp()));
    List<Duration> times = checked("minutes", () -> times(line.minutes())).orElseGet(List::of);
    Vessel vessel = checked("vessel", () -> Vessel.parse(line.vessel())).orElse(Vessel.NOT_STATED);
    Agitation agitation =
        line.agitation().isBlank()
            ? developer.usualAgitation()
            : checked("agitation", () -> Agitation.parse(line.agitation()))
                .orElse(Agitation.ORDINARY);
    if (!problems.isEmpty()) {
      return new Reading(Optional.empty(), List.copyOf(problems));
    }
    String source = line.source().strip();
    Standing standing = TimeEntry.standingOfTyped(source);
    return new Reading(
        Optional.of(
            new TimeEntry(
                "",
                film,
                FilmFormat.ANY,
                developer.name(),
                dilution,
                "",
                index,
                temperature,
                line.temp().isBlank() ? "" : printed(line.temp()),
                times.get(0),
                times.size() > 1 ? Optional.of(times.get(1)) : Optional.empty(),
                vessel,
                agitation,
                line.contrast().strip(),
                Citation.of(source),
                standing,
                false,
                asTyped(line.agitation(), agitation))),
        List.of());
  }

  /** The leaflet's own words about agitation, kept beside the way they come to. */
  private static String asTyped(String typed, Agitation agitation) {
    return typed.isBlank() || agitation.isSaidBy(typed) ? "" : typed.strip();
  }

  private <T> Optional<T> checked(String column, Supplier<T> parse) {
    try {
      return Optional.of(parse.get());
    } catch (BadValueException refusal) {
      problems.add(new RowProblem(row, column, String.valueOf(refusal.getMessage())));
      return Optional.empty();
    }
  }

  private String filmCode(String typed) {
    if (typed.isBlank()) {
      throw new BadValueException("film", "", "say which");
    }
    return FilmNames.maybe(now.films(), typed.strip())
        .map(coatings -> coatings.get(0))
        .orElseGet(() -> Film.ownNamed(typed))
        .code();
  }

  private Developer developer(String typed) {
    if (typed.isBlank()) {
      throw new BadValueException("developer", "", "say which");
    }
    return now.developers().find(typed).orElseGet(() -> Developer.ownNamed(typed));
  }

  private static Temperature temperature(String typed) {
    Temperature temperature = Temperature.parse(typed);
    if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(WARMEST) > 0) {
      throw new BadValueException(
          "temperature", typed.strip(), "a developer is between 5 and 60 °C (41 and 140 °F)");
    }
    return temperature;
  }

  /** As typed, in one form: {@code 68 °F}. */
  private static String printed(String typed) {
    String bare = typed.strip().toUpperCase(java.util.Locale.ROOT).replaceAll("[\\s°]", "");
    return bare.substring(0, bare.length() - 1) + " °" + bare.charAt(bare.length() - 1);
  }

  private static List<Duration> times(String typed) {
    Matcher range = RANGE.matcher(typed);
    if (range.matches()) {
      Duration shortest = time(range.group(1));
      Duration longest = time(range.group(2));
      if (longest.compareTo(shortest) <= 0) {
        throw new BadValueException(
            "minutes", typed.strip(), "the second time of a range must be the longer one");
      }
      return List.of(shortest, longest);
    }
    return List.of(time(typed));
  }

  private static Duration time(String typed) {
    String bare = typed.strip().replaceFirst("\\s*min$", "");
    if (bare.isEmpty()) {
      throw new BadValueException("minutes", typed, "say the time, for example 9:45");
    }
    if (bare.matches("\\d+,\\d+")) {
      throw new BadValueException(
          "minutes", bare, "write the decimal mark as a point (9.75), or 9:45");
    }
    Duration time =
        DECIMAL_MINUTES.matcher(bare).matches()
            ? TimeSpan.ofSeconds(Double.parseDouble(bare) * 60)
            : TimeSpan.parse("minutes", bare);
    if (time.isZero() || time.compareTo(LONGEST) > 0) {
      throw new BadValueException("minutes", bare, "it must be more than 0 and at most 24 h");
    }
    return time;
  }
}
