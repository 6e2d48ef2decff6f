package org.wetside.core.learning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.development.ContrastSeries;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEstimator;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.sensitometry.ContrastCurve;

/**
 * Finds what contrast the maker's time gives, and how fast contrast grows with time there: the
 * maker's time for the conditions of the film's series, looked up in that series.
 */
public final class MakersContrast {
  /** Slopes are taken between the time divided and multiplied by this. */
  private static final double STEP = 1.05;

  /** Below this slope contrast hardly depends on time, and says nothing of it. */
  private static final double LEAST_SLOPE = 0.1;

  private final TimeLibrary library;

  /** Over published and own times and series, without factors of the user's. */
  public MakersContrast(TimeLibrary library) {
    this.library = library;
  }

  /**
   * What was found.
   *
   * @param basis the basis; empty when there is none
   * @param why why not; empty with a basis
   */
  public record Found(Optional<ContrastBasis> basis, String why) {}

  /** For the film, developer, dilution and index of a question; its temperature does not matter. */
  public Found of(TimeQuestion question) {
    List<ContrastSeries> series =
        library.contrastOf(question.film().code(), question.developer().name()).stream()
            .filter(one -> one.temperature().isPresent() && one.dilution().ratio().isPresent())
            .sorted(Comparator.comparing(one -> !one.dilution().matches(question.dilution())))
            .toList();
    if (series.isEmpty()) {
      return new Found(
          Optional.empty(),
          "no series of contrast against time of "
              + question.film().name()
              + " in "
              + question.developer().name()
              + " is on file");
    }
    for (ContrastSeries one : series) {
      Optional<ContrastBasis> basis = basis(one, question);
      if (basis.isPresent()) {
        return new Found(basis, "");
      }
    }
    return new Found(
        Optional.empty(),
        "the maker's time lies outside the series of contrast against time on file");
  }

  private Optional<ContrastBasis> basis(ContrastSeries series, TimeQuestion asked) {
    TimeQuestion there =
        new TimeQuestion(
            asked.film(),
            asked.format(),
            asked.developer(),
            series.dilution(),
            asked.exposureIndex(),
            series.temperature().orElseThrow(),
            series.vessel(),
            asked.agitation(),
            Optional.empty(),
            asked.thermometerUncertainty(),
            asked.outsideOrdinaryTemperatures());
    TimeAnswer answer = new TimeEstimator(library).answer(there);
    return answer instanceof TimeAnswer.Estimate estimate
        ? basis(series, TimeSpan.toSeconds(estimate.time()))
        : Optional.empty();
  }

  private static Optional<ContrastBasis> basis(ContrastSeries series, double seconds) {
    ContrastCurve curve = series.curve();
    OptionalDouble expected = curve.contrastAt(seconds);
    double early = Math.max(seconds / STEP, curve.firstSeconds());
    double late = Math.min(seconds * STEP, curve.lastSeconds());
    if (expected.isEmpty() || !(late > early)) {
      return Optional.empty();
    }
    double slope =
        Math.log(curve.contrastAt(late).orElseThrow() / curve.contrastAt(early).orElseThrow())
            / Math.log(late / early);
    String words =
        series.measure()
            + " of "
            + series.dilution().label()
            + " at "
            + series.temperature().orElseThrow()
            + ", "
            + series.citation();
    return slope < LEAST_SLOPE
        ? Optional.empty()
        : Optional.of(new ContrastBasis(words, expected.getAsDouble(), slope));
  }
}
