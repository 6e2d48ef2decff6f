package org.wetside.app.times;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.development.Agitation;
import org.wetside.core.development.Developer;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEstimator;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.development.Vessel;
import org.wetside.core.learning.OwnIndex;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.store.Database;

/** Finds a development time to believe, or says why there is none. */
public final class AskTime {
  private final TimeShelf shelf;

  /** Over this home's own times; the database is opened by the first question. */
  public AskTime(Supplier<Database> database) {
    shelf = new TimeShelf(database);
  }

  /**
   * Begins to read the published times beside whatever comes next: a command that asks once opens
   * its database meanwhile.
   */
  public AskTime readingAhead() {
    TimeShelf.readAhead();
    return this;
  }

  /**
   * The answer to what was typed.
   *
   * @throws BadValueException when the question cannot be understood: an unknown film with the
   *     nearest names, a name of several films with the list, a value without its unit
   */
  public TimeAnswer answer(TimeRequest request) {
    return answer(request, shelf.now());
  }

  /**
   * The dilutions on file for a film in a developer, from each of which an answer could start.
   *
   * @throws BadValueException when the film or the developer is not known
   */
  public List<Dilution> dilutions(String typedFilm, String typedDeveloper) {
    TimeShelf.Now now = shelf.now();
    List<Film> coatings = FilmNames.coatings(now.films(), typedFilm);
    Developer developer = now.developers().require(typedDeveloper);
    Film film = FilmNames.withTimes(coatings, developer, now.library());
    return now.library().dilutionsOf(film.code(), developer.name()).stream()
        .map(label -> developer.resolve(Dilution.parse(label)))
        .filter(dilution -> !(dilution instanceof Dilution.Unknown))
        .toList();
  }

  /**
   * The user's own index of a film in a developer, as far as one is in use; empty too where either
   * is not known.
   */
  public Optional<ExposureIndex> indexInUse(String typedFilm, String typedDeveloper) {
    TimeShelf.Now now = shelf.now();
    if (now.indexes().isEmpty()) {
      return Optional.empty();
    }
    try {
      Developer developer = now.developers().require(typedDeveloper);
      Film film =
          FilmNames.withTimes(FilmNames.coatings(now.films(), typedFilm), developer, now.library());
      return IndexInUse.find(now.indexes(), film, developer).map(OwnIndex::middle);
    } catch (BadValueException notKnown) {
      return Optional.empty();
    }
  }

  static TimeAnswer answer(TimeRequest request, TimeShelf.Now now) {
    List<Film> coatings =
        FilmNames.coatings(now.films(), required("film", request.film(), "T-MAX 400"));
    Developer developer =
        now.developers().require(required("developer", request.developer(), "D-76"));
    Film film = FilmNames.withTimes(coatings, developer, now.library());
    ExposureIndex asked = ExposureIndex.parse(required("exposure index", request.ei(), "400"));
    IndexInUse own = IndexInUse.of(now.indexes(), film, developer, asked);
    TimeQuestion question = question(request, film, developer, own.makers(), now);
    TimeAnswer answer = new TimeEstimator(now.library()).answer(question);
    return answer instanceof TimeAnswer.Estimate estimate
        ? saying(saying(estimate, otherCoatings(estimate, coatings)), own.saying())
        : answer;
  }

  private static TimeQuestion question(
      TimeRequest request, Film film, Developer developer, ExposureIndex index, TimeShelf.Now now) {
    FilmFormat format = FilmFormat.parse(request.format());
    Temperature temperature =
        Temperature.parse(required("temperature", request.temp(), "20C or 68F"));
    Vessel vessel = request.vessel().isBlank() ? Vessel.SMALL_TANK : Vessel.parse(request.vessel());
    Agitation agitation =
        request.agitation().isBlank()
            ? developer.usualAgitation()
            : Agitation.parse(request.agitation());
    return new TimeQuestion(
        film,
        format,
        developer,
        dilution(request.dilution(), film, developer, now),
        index,
        temperature,
        vessel,
        agitation,
        aim(request.aim()),
        TimeQuestion.UNKNOWN_THERMOMETER,
        request.beyond());
  }

  private static String required(String thing, String given, String example) {
    if (given.isBlank()) {
      throw new BadValueException(thing, given, "say which, for example " + example);
    }
    return given.strip();
  }

  private static Dilution dilution(
      String typed, Film film, Developer developer, TimeShelf.Now now) {
    Dilution dilution = developer.resolve(Dilution.parse(typed));
    if (dilution instanceof Dilution.Unknown) {
      List<String> known = now.library().dilutionsOf(film.code(), developer.name());
      throw new BadValueException(
          "dilution",
          typed.strip(),
          known.isEmpty()
              ? "say which, for example stock or 1+1"
              : "say which; on file for this film are " + String.join(", ", known));
    }
    return dilution;
  }

  private static Optional<Double> aim(String typed) {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    String limit = "write a contrast index between 0.3 and 1.5, for example 0.58";
    try {
      double aim = Double.parseDouble(typed.strip());
      if (aim >= 0.3 && aim <= 1.5) {
        return Optional.of(aim);
      }
    } catch (NumberFormatException notANumber) {
      throw new BadValueException("contrast aim", typed.strip(), limit);
    }
    throw new BadValueException("contrast aim", typed.strip(), limit);
  }

  private static Optional<TimeWarning> otherCoatings(
      TimeAnswer.Estimate estimate, List<Film> coatings) {
    Film taken = estimate.question().film();
    List<Film> others = coatings.stream().filter(film -> !film.equals(taken)).toList();
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(new TimeWarning.OtherCoatings(taken, others));
  }

  /** The same with something more to know, right after that it is a former coating. */
  private static TimeAnswer.Estimate saying(
      TimeAnswer.Estimate estimate, Optional<TimeWarning> more) {
    if (more.isEmpty()) {
      return estimate;
    }
    List<TimeWarning> warnings = new ArrayList<>(estimate.warnings());
    warnings.add(estimate.question().film().isFormerCoating() ? 1 : 0, more.get());
    return new TimeAnswer.Estimate(
        estimate.question(),
        estimate.headline(),
        estimate.benchLnSd(),
        estimate.others(),
        estimate.disagreements(),
        warnings);
  }
}
