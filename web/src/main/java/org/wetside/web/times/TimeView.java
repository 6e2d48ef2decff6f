package org.wetside.web.times;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.wetside.app.NoAnswerException;
import org.wetside.app.learning.SeeLearned;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.Band;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.quantity.TimeSpan;

/**
 * A development time, as {@code GET /api/time} answers and {@code wetside time --json} prints.
 *
 * @param film name of the film taken
 * @param filmCode its coating
 * @param developer name of the developer
 * @param dilution dilution
 * @param ei exposure index
 * @param temperatureC temperature of the bath
 * @param vessel tank
 * @param format what was asked for, {@code any} when nothing
 * @param seconds the time
 * @param time the same in minutes and seconds
 * @param basis the steps, the entry first
 * @param standing standing of the weakest step
 * @param bandSeconds nine in ten of what the source says, low and high
 * @param benchBandSeconds nine in ten at this bench, low and high
 * @param warnings what one must know beside it
 * @param others other ways to it
 * @param disagreements those whose bands do not touch
 * @param yours what your own rolls say beside it, in words, and whether that is in use; null when
 *     nothing was learned
 * @param yourIndex the same of the index at which shadows come out; null likewise
 */
public record TimeView(
    String film,
    String filmCode,
    String developer,
    String dilution,
    double ei,
    double temperatureC,
    String vessel,
    String format,
    double seconds,
    String time,
    List<StepView> basis,
    String standing,
    List<Double> bandSeconds,
    List<Double> benchBandSeconds,
    List<String> warnings,
    List<OtherView> others,
    List<OtherView> disagreements,
    @Nullable String yours,
    @Nullable String yourIndex) {
  /**
   * The view of an answer.
   *
   * @param learned what was learned from negatives
   * @throws NoAnswerException when there is no honest time, with the reasons and what would help
   */
  public static TimeView of(TimeAnswer answer, Supplier<SeeLearned.Now> learned) {
    if (answer instanceof TimeAnswer.NoHonestTime none) {
      throw new NoAnswerException(TimeWords.message(none));
    }
    TimeAnswer.Estimate estimate = (TimeAnswer.Estimate) answer;
    TimeQuestion question = estimate.question();
    SeeLearned.Now yours = learned.get();
    return new TimeView(
        question.film().name(),
        question.film().code(),
        question.developer().name(),
        question.dilution().label(),
        question.exposureIndex().isoArithmetic(),
        question.temperature().celsius(),
        question.vessel().word(),
        question.format().word(),
        TimeSpan.toSeconds(estimate.time()),
        TimeWords.clock(estimate.time()),
        estimate.basis().stream().map(StepView::of).toList(),
        estimate.standing().word(),
        seconds(estimate.band()),
        seconds(estimate.benchBand()),
        estimate.warnings().stream().map(TimeWords::of).toList(),
        estimate.others().stream().map(OtherView::of).toList(),
        estimate.disagreements().stream().map(OtherView::of).toList(),
        yours.beside(question).orElse(null),
        yours.indexBeside(question).orElse(null));
  }

  static List<Double> seconds(Band band) {
    return List.of(tenths(TimeSpan.toSeconds(band.low())), tenths(TimeSpan.toSeconds(band.high())));
  }

  private static double tenths(double seconds) {
    return Math.round(seconds * 10) / 10.0;
  }
}
