package org.wetside.web.mixing;

import java.util.List;
import java.util.stream.Collectors;
import org.wetside.app.NoAnswerException;
import org.wetside.app.mixing.Temper;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TemperingQuestion;

/**
 * What to pour for a volume at a temperature.
 *
 * @param targetC temperature wanted
 * @param totalMl volume wanted, at the target
 * @param coldMl cold water to pour
 * @param hotMl hot water to pour
 * @param iceMl of the third water
 * @param stockMl stock or concentrate counted in
 * @param waterC what the water has by itself, before the stock
 * @param pour the waters to pour, coldest first
 * @param asItComesC what everything has when only the cold water is taken
 * @param alternative the alternative to tempering, in one sentence
 * @param cautions at the moment of pouring
 */
public record TemperView(
    double targetC,
    double totalMl,
    double coldMl,
    double hotMl,
    double iceMl,
    double stockMl,
    double waterC,
    List<PourView> pour,
    double asItComesC,
    String alternative,
    List<CautionView> cautions) {

  /** One water to pour. */
  public record PourView(String name, double volumeMl, double temperatureC) {
    static PourView of(Liquid part) {
      return new PourView(part.name(), part.volume().millilitres(), part.temperature().celsius());
    }
  }

  /**
   * The view of an answer, its sentences in those units.
   *
   * @throws NoAnswerException when the waters at hand do not reach it, with the nearest
   */
  public static TemperView of(TemperingQuestion question, Temper.Answer answer, Units units) {
    String alternative = alternative(answer, units);
    if (answer.tempering() instanceof Tempering.CannotBeReached none) {
      throw new NoAnswerException(cannotBeReached(question, none, units) + " " + alternative);
    }
    Tempering.Reached reached = (Tempering.Reached) answer.tempering();
    return new TemperView(
        question.target().celsius(),
        question.total().millilitres(),
        reached.of("cold").millilitres(),
        reached.of("hot").millilitres(),
        reached.of("ice").millilitres(),
        question.countedIn().stream().mapToDouble(part -> part.volume().millilitres()).sum(),
        reached.waterTemperature().celsius(),
        reached.pour().stream().map(PourView::of).toList(),
        answer.asItComes().celsius(),
        alternative,
        answer.cautions().stream().map(CautionView::of).toList());
  }

  private static String alternative(Temper.Answer answer, Units units) {
    String degrees = units.words(answer.asItComes());
    return "Or work at the temperature there is: without tempering everything has "
        + degrees
        + "; ask for the development time at "
        + degrees
        + ".";
  }

  private static String cannotBeReached(
      TemperingQuestion question, Tempering.CannotBeReached none, Units units) {
    String waters =
        question.waters().stream()
            .map(water -> water.name() + " " + units.words(water.temperature()))
            .collect(Collectors.joining(", "));
    return units.words(question.target())
        + " cannot be reached with "
        + waters
        + (question.countedIn().isEmpty() ? "" : " and what is counted in")
        + ": the nearest is "
        + units.words(none.nearest())
        + ".";
  }
}
