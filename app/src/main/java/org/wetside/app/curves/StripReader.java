package org.wetside.app.curves;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.density.Densitometry;
import org.wetside.core.development.Vessel;
import org.wetside.core.instrument.Calibration;
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
import org.wetside.core.strip.MadeWith;
import org.wetside.core.strip.StepLight;
import org.wetside.core.strip.StepScale;

/**
 * Turns what was typed of a strip into one that has a curve, or names all that is wrong with it.
 */
public final class StripReader {
  private static final double SECONDS_PER_MINUTE = 60;

  private final Units units;
  private final KeptTools tools;
  private final TypedFields fields = new TypedFields();

  /**
   * For strips of which no tablet and no instrument is named.
   *
   * @param units in which a bare temperature is read
   */
  public StripReader(Units units) {
    this(units, new KeptTools(Optional.empty()));
  }

  /**
   * @param units in which a bare temperature is read
   * @param densitometry tablets and instruments that may be named
   */
  public StripReader(Units units, Densitometry densitometry) {
    this(units, new KeptTools(Optional.of(densitometry)));
  }

  private StripReader(Units units, KeptTools tools) {
    this.units = units;
    this.tools = tools;
  }

  /** What is wrong, by the field of {@link StripDraft}; empty after a strip was read. */
  public Map<String, String> problems() {
    return fields.problems();
  }

  /** The strip; empty when anything stands in the way. */
  public Optional<FilmStrip> read(StripDraft draft) {
    fields.forget();
    Optional<String> film = fields.needed("film", "film", draft.film(), name -> name);
    Optional<String> developer =
        fields.needed("developer", "developer", draft.developer(), name -> name);
    Optional<Dilution> dilution = fields.read("dilution", draft.dilution(), Dilution::parse);
    Optional<Duration> time =
        fields.needed("minutes", "development time", draft.minutes(), StripReader::time);
    Optional<Temperature> temperature = fields.read("temp", draft.temp(), units::temperature);
    Optional<Vessel> vessel = fields.read("vessel", draft.vessel(), Vessel::parse);
    Optional<LocalDate> day = fields.read("day", draft.day(), StripReader::day);
    Optional<StepLight> light = fields.needed("light", "light", draft.light(), StepLight::fromWord);
    Optional<OpticalDensity> baseFog =
        fields.read("baseFog", draft.baseFog(), StripReader::baseFog);
    Optional<PlaceTable> table =
        fields.needed(
            "readings",
            "readings",
            draft.readings(),
            text -> PlaceTable.parse(text, draft.columns().strip()));
    Optional<StepScale> scale = table.flatMap(found -> scale(found.column(), draft));
    Optional<KeptTools.Reader> reader = reader(draft);
    if (table.isPresent() && reader.isPresent()) {
      fields.check("readings", () -> reader.get().check(table.get().readings()));
    }
    if (!fields.problems().isEmpty() || time.isEmpty() || light.isEmpty() || scale.isEmpty()) {
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
              madeWith(scale.get(), draft, reader),
              draft.note());
      int steps = CharacteristicCurve.through(strip.curveReadings()).stepCount();
      return steps > 0 ? Optional.of(strip) : Optional.empty();
    } catch (BadValueException refused) {
      fields.refuse(fieldOf(refused.thing()), refused);
      return Optional.empty();
    }
  }

  private Optional<StepScale> scale(String column, StripDraft draft) {
    switch (column) {
      case StepScale.TabletSteps.COLUMN -> {
        Optional<LogExposure> clear =
            fields.needed(
                "clear",
                "log exposure of the clear light",
                draft.clear(),
                text ->
                    LogExposure.ofLog10LuxSeconds(
                        NumberTable.number("log exposure of the clear light", text, "-0.60")));
        return densities(draft)
            .map(
                all ->
                    new StepScale.TabletSteps(
                        clear.orElseGet(() -> LogExposure.ofLog10LuxSeconds(0)), all));
      }
      case StepScale.CameraStops.COLUMN -> {
        refuseTablet(column, draft);
        return fields
            .needed("index", "metered index", draft.index(), ExposureIndex::parse)
            .map(StepScale.CameraStops::new);
      }
      default -> {
        refuseTablet(column, draft);
        return Optional.of(new StepScale.LogExposures());
      }
    }
  }

  /** The instrument by its newest calibration, or that of the day that was said. */
  private Optional<KeptTools.Reader> reader(StripDraft draft) {
    Optional<KeptTools.Reader> newest =
        fields.read("instrument", draft.instrument(), tools::reader);
    if (draft.calibratedOn().isBlank()) {
      return newest;
    }
    if (draft.instrument().isBlank()) {
      fields.refuse(
          "calibratedOn",
          new BadValueException(
              "day of the calibration",
              draft.calibratedOn().strip(),
              "say which instrument was calibrated then, or leave the day empty"));
    }
    return newest.flatMap(
        one -> fields.read("calibratedOn", draft.calibratedOn(), text -> one.on(day(text))));
  }

  /** A tablet that was chosen where the places are not its steps: one of the two is a slip. */
  private void refuseTablet(String column, StripDraft draft) {
    if (!draft.keptTablet().isBlank()) {
      fields.refuse(
          "keptTablet",
          new BadValueException(
              "tablet",
              draft.keptTablet().strip(),
              "the readings are read as "
                  + column
                  + ",density: say that they are step,density, or choose no tablet"));
    }
  }

  /** Typed, or those of a tablet that is written down; both only where they say the same. */
  private Optional<List<OpticalDensity>> densities(StripDraft draft) {
    if (draft.keptTablet().isBlank()) {
      return fields.needed(
          "tablet", "densities of the tablet", draft.tablet(), StripReader::tablet);
    }
    Optional<List<OpticalDensity>> kept =
        fields.read("keptTablet", draft.keptTablet(), name -> KeptTools.steps(tools.tablet(name)));
    Optional<List<OpticalDensity>> typed =
        fields.read("tablet", draft.tablet(), StripReader::tablet);
    if (kept.isPresent() && typed.isPresent() && !kept.equals(typed)) {
      fields.refuse(
          "tablet",
          new BadValueException(
              "densities of the tablet",
              draft.tablet().strip(),
              "these are not the densities that "
                  + draft.keptTablet().strip()
                  + " has now: empty the field to take those, or choose no tablet"));
    }
    return kept;
  }

  private MadeWith madeWith(StepScale scale, StripDraft draft, Optional<KeptTools.Reader> reader) {
    return new MadeWith(
        scale instanceof StepScale.TabletSteps && !draft.keptTablet().isBlank()
            ? tools.tablet(draft.keptTablet().strip()).name()
            : "",
        reader.map(one -> one.known().instrument().name()).orElse(""),
        reader.flatMap(KeptTools.Reader::calibration).map(Calibration::on));
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
