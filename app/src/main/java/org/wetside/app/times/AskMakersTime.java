package org.wetside.app.times;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.learning.ContrastBasis;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.MakersContrast;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;
import org.wetside.store.Database;

/** What a time would be by what is printed alone, and what contrast that is printed to give. */
public final class AskMakersTime {
  private final TimeShelf shelf;

  /** Over this home's own times and the published ones. */
  public AskMakersTime(Supplier<Database> database) {
    shelf = new TimeShelf(database);
  }

  /**
   * What is printed.
   *
   * @param of film and developer, as the catalogue has them; empty when one is not known
   * @param film name of the film
   * @param time the time; empty when there is no honest one
   * @param source where it is from, or why there is none
   * @param contrast contrast at that time; empty when there is no series
   * @param whyNoContrast why not; empty with a series
   */
  public record Makers(
      Optional<FilmInDeveloper> of,
      String film,
      Optional<Duration> time,
      String source,
      Optional<ContrastBasis> contrast,
      String whyNoContrast) {
    /** Nothing, for this reason. */
    public static Makers none(String film, String why) {
      return new Makers(Optional.empty(), film, Optional.empty(), why, Optional.empty(), why);
    }
  }

  /** For a question; one that cannot be understood has no maker's time, with the reason. */
  public Makers of(TimeRequest request) {
    TimeShelf.Now now = shelf.withoutFactors();
    TimeAnswer answer;
    try {
      answer = AskTime.answer(request, now);
    } catch (BadValueException notAsked) {
      return Makers.none(request.film(), String.valueOf(notAsked.getMessage()));
    }
    if (answer instanceof TimeAnswer.Estimate estimate) {
      return found(estimate, new MakersContrast(now.library()));
    }
    TimeAnswer.NoHonestTime none = (TimeAnswer.NoHonestTime) answer;
    String why = "there is no honest time for its conditions";
    return new Makers(
        Optional.of(of(none.question())),
        none.question().film().name(),
        Optional.empty(),
        why,
        Optional.empty(),
        why);
  }

  private static Makers found(TimeAnswer.Estimate estimate, MakersContrast contrasts) {
    TimeQuestion question = estimate.question();
    boolean measured = estimate.headline().entry().standing() == Standing.MEASURED;
    MakersContrast.Found contrast = contrasts.of(question);
    return new Makers(
        Optional.of(of(question)),
        question.film().name(),
        measured ? Optional.empty() : Optional.of(estimate.time()),
        measured
            ? "its time is one you measured, and needs no factor"
            : estimate.headline().entry().citation().toString(),
        contrast.basis(),
        contrast.why());
  }

  private static FilmInDeveloper of(TimeQuestion question) {
    return new FilmInDeveloper(question.film().code(), question.developer().name());
  }
}
