package org.wetside.app.curves;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.StepLight;
import org.wetside.core.strip.StepScale;

/**
 * Turns what was typed of a strip into one that has a curve, or names all that is wrong with it.
 */
public final class StripReader {
  private static final double SECONDS_PER_MINUTE = 60;

  private final Units units;
  private final Map<String, String> problems = new LinkedHashMap<>();

  /**
   * @param units in which a bare temperature is read
   */
  public StripReader(Units units) {
    this.units = units;
  }

  /** What is wrong, by the field of {@link StripDraft}; empty after a strip was read. */
  public Map<String, String> problems() {
    return Map.copyOf(problems);
  }

  /** The strip; empty when anything stands in the way. */
  public Optional<FilmStrip> read(StripDraft draft) {
    problems.clear();
    Optional<String> film = needed("film", "film", draft.film(), name -> name);
    Optional<String> developer = needed("developer", "developer", draft.developer(), name -> name);
    Optional<Dilution> dilution = field("dilution", draft.dilution(), Dilution::parse);
    Optional<Duration> time =
        needed("minutes", "development time", draft.minutes(), StripReader::time);
    Optional<Temperature> temperature = field("temp", draft.temp(), units::temperature);
    Optional<Vessel> vessel = field("vessel", draft.vessel(), Vessel::parse);
    Optional<LocalDate> day = field("day", draft.day(), StripReader::day);
    Optional<StepLight> light = needed("light", "light", draft.light(), StepLight::fromWord);
    Optional<OpticalDensity> baseFog = field("baseFog", draft.baseFog(), StripReader::baseFog);
    Optional<PlaceTable> table =
        needed(
            "readings",
            "readings",
            draft.readings(),
            text -> PlaceTable.parse(text, draft.columns().strip()));
    Optional<StepScale> scale = table.flatMap(found -> scale(found.column(), draft));
    if (!problems.isEmpty() || time.isEmpty() || light.isEmpty() || scale.isEmpty()) {
      return Optional.empty();
    }
    try {
      FilmStrip strip =
          new FilmStrip(
              film.orElse(""),
              developer.orElse(""),
              dilution.orElseGet(Dilution::notStated),
              time.get(),
              temperature,
              vessel.orElse(Vessel.NOT_STATED),
              day,
              light.get(),
              scale.get(),
              table.orElseThrow().readings(),
              baseFog,
              table.orElseThrow().densityStep(),
              draft.note());
      int steps = CharacteristicCurve.through(strip.curveReadings()).stepCount();
      return steps > 0 ? Optional.of(strip) : Optional.empty();
    } catch (BadValueException refused) {
      problems.put(fieldOf(refused.thing()), String.valueOf(refused.getMessage()));
      return Optional.empty();
    }
  }

  private Optional<StepScale> scale(String column, StripDraft draft) {
    switch (column) {
      case StepScale.TabletSteps.COLUMN -> {
        Optional<LogExposure> clear =
            needed(
                "clear",
                "log exposure of the clear light",
                draft.clear(),
                text ->
                    LogExposure.ofLog10LuxSeconds(
                        NumberTable.number("log exposure of the clear light", text, "-0.60")));
        Optional<StepScale> steps =
            needed(
                "tablet",
                "densities of the tablet",
                draft.tablet(),
                text ->
                    new StepScale.TabletSteps(
                        clear.orElseGet(() -> LogExposure.ofLog10LuxSeconds(0)), tablet(text)));
        return steps;
      }
      case StepScale.CameraStops.COLUMN -> {
        return needed("index", "metered index", draft.index(), ExposureIndex::parse)
            .map(StepScale.CameraStops::new);
      }
      default -> {
        return Optional.of(new StepScale.LogExposures());
      }
    }
  }

  private <T> Optional<T> needed(
      String field, String thing, String typed, Function<String, T> read) {
    if (typed.isBlank()) {
      problems.put(field, new BadValueException(thing, "", "it is needed").getMessage());
    }
    return field(field, typed, read);
  }

  private <T> Optional<T> field(String field, String typed, Function<String, T> read) {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(typed.strip()));
    } catch (BadValueException refused) {
      problems.put(field, String.valueOf(refused.getMessage()));
      return Optional.empty();
    }
  }

  /** Which field a refusal of the whole strip belongs to. */
  private static String fieldOf(String thing) {
    return switch (thing) {
      case "film", "developer", "light", "note" -> thing;
      case "development time" -> "minutes";
      case "base plus fog" -> "baseFog";
      case "densities of the tablet" -> "tablet";
      default -> "readings";
    };
  }

  private static Duration time(String text) {
    String bare = text.replaceFirst("\\s*min$", "");
    return bare.indexOf(':') >= 0
        ? TimeSpan.parse("development time", bare)
        : TimeSpan.ofSeconds(
            NumberTable.number("development time", bare, "9:40") * SECONDS_PER_MINUTE);
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException notOne) {
      throw new BadValueException(
          "day", text, "write it as year-month-day, for example 2026-01-10");
    }
  }

  private static OpticalDensity baseFog(String text) {
    return OpticalDensity.of(NumberTable.number("base plus fog", text, "0.25"));
  }

  /** Numbers parted by blanks, lines or commas; a comma inside a number is refused. */
  private static List<OpticalDensity> tablet(String text) {
    List<OpticalDensity> densities = new ArrayList<>();
    for (String token : text.replace("\uFEFF", "").strip().split("[\\s;]+", -1)) {
      for (String cell : parts(token.replaceFirst(",$", ""))) {
        densities.add(OpticalDensity.of(NumberTable.number("density of the tablet", cell, "0.20")));
      }
    }
    return densities;
  }

  private static List<String> parts(String token) {
    List<String> cells = List.of(token.split(",", -1));
    return cells.stream().allMatch(cell -> cell.indexOf('.') >= 0) ? cells : List.of(token);
  }
}
