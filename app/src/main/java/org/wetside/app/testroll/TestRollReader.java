package org.wetside.app.testroll;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.Aperture;
import org.wetside.core.testroll.CameraExposure;
import org.wetside.core.testroll.CameraRange;
import org.wetside.core.testroll.RollPieces;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.Shutter;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.ThreeTimes;

/** Turns what was typed of a test roll into one that can be exposed, or names all that is wrong. */
public final class TestRollReader {
  private static final String METERED = "metered exposure";
  private static final String MIDDLE = "middle time";

  private final Units units;
  private final Map<String, BadValueException> problems = new LinkedHashMap<>();

  /**
   * @param units in which a bare temperature is read
   */
  public TestRollReader(Units units) {
    this.units = units;
  }

  /** What is wrong, by the field of {@link TestRollDraft}; empty after a roll was read. */
  public Map<String, BadValueException> problems() {
    return Map.copyOf(problems);
  }

  /** The roll; empty when anything stands in the way. */
  public Optional<TestRoll> read(TestRollDraft draft) {
    problems.clear();
    Optional<ExposureIndex> index = field("index", draft.index(), ExposureIndex::parse);
    Optional<Dilution> dilution = field("dilution", draft.dilution(), Dilution::parse);
    Optional<Temperature> temperature = field("temp", draft.temp(), units::temperature);
    Optional<Vessel> vessel = field("vessel", draft.vessel(), Vessel::parse);
    field("frames", draft.frames(), TestRollReader::pieces);
    Optional<CameraExposure> metered =
        needed(
            "metered",
            METERED,
            draft.metered(),
            "1/60@f8",
            text -> CameraExposure.parse(METERED, text));
    Optional<ThreeTimes> times =
        needed("middle", MIDDLE, draft.middle(), "8min", text -> ThreeTimes.around(time(text)));
    Optional<CameraRange> camera = camera(draft);
    if (!problems.isEmpty() || metered.isEmpty() || times.isEmpty() || camera.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new TestRoll(
              draft.film(),
              index,
              draft.developer(),
              dilution.orElseGet(Dilution::notStated),
              temperature,
              vessel.orElse(Vessel.NOT_STATED),
              new RollPlan(metered.get(), camera.get(), times.get())));
    } catch (BadValueException refused) {
      problems.put(fieldOf(refused.thing()), refused);
      return Optional.empty();
    }
  }

  /** The same with everything that a kept roll needs; empty when something is missing or wrong. */
  public Optional<TestRoll> readComplete(TestRollDraft draft) {
    Optional<TestRoll> read = read(draft);
    if (draft.film().isBlank() || draft.index().isBlank() || draft.developer().isBlank()) {
      missing("film", "film", draft.film());
      missing("index", "exposure index", draft.index());
      missing("developer", "developer", draft.developer());
      return Optional.empty();
    }
    return read;
  }

  /**
   * Reads or refuses.
   *
   * @throws BadValueException the first problem
   */
  public TestRoll require(TestRollDraft draft) {
    return read(draft).orElseThrow(() -> problems.values().iterator().next());
  }

  /**
   * Reads with everything that a kept roll needs, or refuses.
   *
   * @throws BadValueException the first problem
   */
  public TestRoll requireComplete(TestRollDraft draft) {
    return readComplete(draft).orElseThrow(() -> problems.values().iterator().next());
  }

  private void missing(String field, String thing, String typed) {
    if (typed.isBlank()) {
      problems.put(
          field, new BadValueException(thing, "", "it is needed where a test roll is kept"));
    }
  }

  private Optional<CameraRange> camera(TestRollDraft draft) {
    CameraRange usual = CameraRange.USUAL;
    Optional<Shutter> fastest = field("fastest", draft.fastest(), Shutter::parse);
    Optional<Shutter> slowest = field("slowest", draft.slowest(), Shutter::parse);
    Optional<Aperture> widest = field("widest", draft.widest(), Aperture::parse);
    Optional<Aperture> smallest = field("smallest", draft.smallest(), Aperture::parse);
    try {
      return Optional.of(
          new CameraRange(
              fastest.orElse(usual.fastest()),
              slowest.orElse(usual.slowest()),
              widest.orElse(usual.widest()),
              smallest.orElse(usual.smallest())));
    } catch (BadValueException refused) {
      problems.putIfAbsent(fieldOf(refused.thing()), refused);
      return Optional.empty();
    }
  }

  /** Which field a refusal of the whole belongs to. */
  private static String fieldOf(String thing) {
    return switch (thing) {
      case "film", "developer" -> thing;
      case "slowest shutter speed" -> "slowest";
      case "fastest shutter speed", "camera range" -> "fastest";
      case "smallest aperture" -> "smallest";
      default -> "metered";
    };
  }

  private <T> Optional<T> needed(
      String field, String thing, String typed, String example, Function<String, T> read) {
    if (typed.isBlank()) {
      problems.put(
          field, new BadValueException(thing, "nothing", "give it, for example " + example));
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
      problems.put(field, refused);
      return Optional.empty();
    }
  }

  private static Duration time(String text) {
    return TimeSpan.parse(MIDDLE, text);
  }

  private static RollPieces pieces(String text) {
    if (!text.matches("\\d{1,3}")) {
      throw new BadValueException("frames", text, "a whole number, for example 36");
    }
    return new RollPieces(Integer.parseInt(text));
  }
}
