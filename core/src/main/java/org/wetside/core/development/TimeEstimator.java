package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.BENCH_FILM;
import static org.wetside.core.development.StepRule.Name.BENCH_PERSON;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The front door: answers a {@link TimeQuestion} from what a {@link TimeLibrary} holds.
 *
 * <p>Every entry of the film and developer is followed to the asked conditions; each step of the
 * way multiplies the time and adds to its uncertainty in ln(time), in quadrature. The headline is
 * the narrowest way among those of the best standing that are not wider than 1.5 times the
 * narrowest of all. Where no way is honest, none is taken.
 */
public final class TimeEstimator {
  /** A better standing may be this much wider and still lead. */
  private static final double WIDER_FOR_STANDING = 1.5;

  private static final int MOST_OTHERS = 4;

  private final TimeLibrary library;

  /** Over this library; holds no other state. */
  public TimeEstimator(TimeLibrary library) {
    this.library = library;
  }

  /** The answer, or the reasons why there is no honest one. */
  public TimeAnswer answer(TimeQuestion question) {
    RouteFinder finder = new RouteFinder(library, question);
    return finder.routes.isEmpty()
        ? new Unanswered(library, question, finder).answer()
        : estimate(question, finder.routes);
  }

  private TimeAnswer estimate(TimeQuestion question, List<Route> routes) {
    Route headline = headline(routes);
    Candidate taken = headline.toCandidate();
    List<Candidate> others = new ArrayList<>();
    List<Candidate> disagreements = new ArrayList<>();
    routes.stream()
        .filter(route -> !route.equals(headline) && !route.uses(headline.series()))
        .filter(route -> !leansOn(headline, route))
        .sorted(Comparator.comparingDouble(Route::lnSd))
        .limit(MOST_OTHERS)
        .map(Route::toCandidate)
        .forEach(others::add);
    for (Candidate other : others) {
      boolean anotherSource =
          !other.entry().citation().sourceId().equals(taken.entry().citation().sourceId());
      if (anotherSource && other.band().isApartFrom(taken.band())) {
        disagreements.add(other);
      }
    }
    return new TimeAnswer.Estimate(
        question,
        taken,
        benchLnSd(question, headline),
        others,
        disagreements,
        new Warnings(library, question, headline, routes).of(taken, disagreements));
  }

  /** A way that starts where the headline borrowed a ratio says the same thing again. */
  private static boolean leansOn(Route headline, Route other) {
    return headline.uses(other.series());
  }

  private static Route headline(List<Route> routes) {
    double narrowest = routes.stream().mapToDouble(Route::lnSd).min().orElseThrow();
    return routes.stream()
        .filter(route -> route.lnSd() <= narrowest * WIDER_FOR_STANDING)
        .min(
            Comparator.comparing(Route::standing)
                .thenComparingDouble(Route::lnSd)
                // Of equals, what holds for any format leads (the user's own do), then 135, 120,
                // roll.
                .thenComparing(route -> route.entry().format() != FilmFormat.ANY)
                .thenComparing(route -> route.entry().format()))
        .orElseThrow();
  }

  private double benchLnSd(TimeQuestion question, Route headline) {
    double person = library.rules().get(BENCH_PERSON).lnSd();
    double film = library.rules().get(BENCH_FILM).lnSd();
    double thermometer = headline.slopePerK() * question.thermometerUncertainty().kelvins();
    double total = headline.lnSd();
    double notLearned = headline.isLearned() ? 0 : person * person + film * film;
    return Math.sqrt(total * total + notLearned + thermometer * thermometer);
  }
}
