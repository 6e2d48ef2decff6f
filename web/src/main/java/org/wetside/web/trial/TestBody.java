package org.wetside.web.trial;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.trial.UsualClip;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;

/**
 * A test to begin now; with what was seen, one that was made and timed by other means.
 *
 * @param kind clearing, leader, iodide or residue
 * @param film film of the clip, for a clearing time
 * @param dilution how the fixer was made, for a clearing time; as its label says when not said
 * @param temperatureC of the fixer, for a clearing time
 * @param fresh whether the solution is fresh, so that the time becomes the baseline
 * @param rolls whose washing is tested, for residue
 * @param seen good, bad or unsure; null begins the test
 * @param seconds how long it took, for a clearing time that was seen
 * @param note why nothing can be said, or what else was seen
 */
public record TestBody(
    @Nullable String kind,
    @Nullable String film,
    @Nullable String dilution,
    @Nullable Double temperatureC,
    @Nullable Boolean fresh,
    @Nullable List<String> rolls,
    @Nullable String seen,
    @Nullable Double seconds,
    @Nullable String note) {

  /**
   * Begins or writes it down.
   *
   * @param subject letter of the bottle, or film
   * @throws BadValueException naming the part and its limit
   */
  public Trial to(Wetside wetside, String subject) {
    boolean ofFilm = subject.equals(TestsView.FILM);
    TrialKind what = TrialKind.parse(required("kind of test", kind));
    if (ofFilm != what.ofFilm()) {
      throw new BadValueException(
          "kind of test",
          what.word(),
          ofFilm ? "of film there is the residue test" : "it is made on film; name the rolls");
    }
    if (ofFilm) {
      List<String> numbers = rolls == null ? List.of() : rolls;
      return seen == null
          ? wetside.bathTests().startTest().ofFilm(numbers)
          : wetside.bathTests().judgeTest().madeOfFilm(numbers, Sighting.parse(seen), said());
    }
    Optional<ClipWish> clip =
        what == TrialKind.CLEARING ? Optional.of(clip(wetside, subject)) : Optional.empty();
    return seen == null
        ? wetside.bathTests().startTest().of(subject, what, clip)
        : wetside
            .bathTests()
            .judgeTest()
            .made(subject, what, clip, took(what), Sighting.parse(seen), said());
  }

  private ClipWish clip(Wetside wetside, String subject) {
    return new ClipWish(
        required("film of the clip", film),
        dilution != null ? dilution : usual(wetside, subject),
        Temperature.ofCelsius(required("temperature of the fixer", temperatureC)),
        Boolean.TRUE.equals(fresh));
  }

  private static String usual(Wetside wetside, String subject) {
    return wetside
        .listBottles()
        .find(subject)
        .map(UsualClip::dilution)
        .orElseThrow(
            () -> new BadValueException("bottle", subject, "no bottle of that letter is there"));
  }

  private Duration took(TrialKind what) {
    return what == TrialKind.CLEARING
        ? TimeSpan.ofSeconds(required("clearing time", seconds))
        : seconds == null ? Duration.ZERO : TimeSpan.ofSeconds(seconds);
  }

  private String said() {
    return note == null ? "" : note;
  }

  private static <T> T required(String thing, @Nullable T value) {
    if (value == null) {
      throw new BadValueException(thing, "nothing", "it is needed");
    }
    return value;
  }
}
