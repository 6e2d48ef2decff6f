package org.wetside.web.wash;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.wash.WashAnswer;
import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.wash.ResidueForecast;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WashMethod;

/**
 * A wash foreseen.
 *
 * @param method {@code fills}, {@code running} or the short name of a way on file
 * @param name of the way, in words
 * @param fills how often the tank is filled
 * @param fillMl water that fills it once
 * @param waterMl all the water it takes
 * @param lengthSeconds from the first pour to the last drain
 * @param inWaterSeconds how long the film is in water; null when it was not said
 * @param rolls of film, in the makers' count
 * @param startGramsPerLitre thiosulfate in the fixer
 * @param carryOverMl what comes along with the film
 * @param absorbedMl the part of it in the gelatine
 * @param temperatureC of the wash water
 * @param standing whether all water stands; where it runs the rule of fills says nothing
 * @param equilibriumGramsPerLitre after each fill by the rule of fills, which takes film and water
 *     as come to one strength: the best there can be, not what is
 * @param equilibriumResidueGramsPerSquareMetre the same as mass on the film
 * @param residueGramsPerSquareMetre after each fill by the two liquids, for each half-time on file
 *     ({@code halfTime15Seconds}); a lower bound; null when it was not said how long a fill stays
 * @param byHalfTime each half-time with its source and what it leaves; empty likewise
 * @param limitGramsPerSquareMetre what may stay on the film
 * @param limitName the limit in words, with its source
 * @param verdict what the model says of the limit; null when it says nothing
 * @param text the answer in one sentence, and what to do about it
 * @param advice what to do about it alone; null when the model says nothing
 * @param notes what is to be known of it
 */
public record WashView(
    String method,
    String name,
    int fills,
    double fillMl,
    double waterMl,
    double lengthSeconds,
    @Nullable Double inWaterSeconds,
    double rolls,
    double startGramsPerLitre,
    double carryOverMl,
    double absorbedMl,
    double temperatureC,
    boolean standing,
    List<Double> equilibriumGramsPerLitre,
    List<Double> equilibriumResidueGramsPerSquareMetre,
    @Nullable Map<String, List<Double>> residueGramsPerSquareMetre,
    List<HalfTimeView> byHalfTime,
    double limitGramsPerSquareMetre,
    String limitName,
    @Nullable String verdict,
    String text,
    @Nullable String advice,
    List<String> notes) {

  /**
   * What one half-time leaves.
   *
   * @param ordinarySeconds the half-time as printed
   * @param halfTimeSeconds the same in water of this temperature
   * @param source who prints it
   * @param standing how it is known
   * @param residueGramsPerSquareMetre at the end of the wash; a lower bound
   * @param timesTheRule how many times what the rule of fills says, dimensionless; null where water
   *     runs, for which the rule says nothing
   * @param halfTimeRuleGramsPerSquareMetre by the rule of half-times, in water that is always
   *     clean: the best there can be
   * @param belowLimit whether it lies below the limit, as a lower bound
   */
  public record HalfTimeView(
      double ordinarySeconds,
      double halfTimeSeconds,
      String source,
      String standing,
      double residueGramsPerSquareMetre,
      @Nullable Double timesTheRule,
      double halfTimeRuleGramsPerSquareMetre,
      boolean belowLimit) {

    static HalfTimeView of(ResidueForecast one, WashForecast whole) {
      List<ArealMass> rule = whole.equilibriumResidues();
      return new HalfTimeView(
          TimeSpan.toSeconds(one.basis().ordinary()),
          TimeSpan.toSeconds(one.halfTime()),
          one.basis().citation().toString(),
          one.basis().standing().word(),
          one.atEnd().gramsPerSquareMetre(),
          whole.standing() ? one.atEnd().ratioTo(rule.get(rule.size() - 1)) : null,
          whole.byHalfTimeRule(one).gramsPerSquareMetre(),
          one.atEnd().compareTo(whole.limit().most()) <= 0);
    }
  }

  /** The view of an answer, its sentences in those units. */
  public static WashView of(WashAnswer answer, Units units) {
    WashForecast forecast = answer.forecast();
    WashWords words = new WashWords(answer, units);
    boolean told = answer.dwellSaid();
    return new WashView(
        words.slug(),
        words.name(),
        forecast.question().changes().size(),
        forecast.question().changes().get(0).water().millilitres(),
        forecast.water().millilitres(),
        TimeSpan.toSeconds(forecast.length()),
        told ? TimeSpan.toSeconds(forecast.inWater()) : null,
        forecast.question().carried().film().rolls(),
        forecast.question().start().gramsPerLitre(),
        forecast.question().carried().total().millilitres(),
        forecast.question().carried().absorbed().millilitres(),
        forecast.question().water().celsius(),
        forecast.standing(),
        forecast.equilibrium().stream().map(Concentration::gramsPerLitre).toList(),
        masses(forecast.equilibriumResidues()),
        told ? residues(forecast) : null,
        told
            ? forecast.byHalfTime().stream().map(one -> HalfTimeView.of(one, forecast)).toList()
            : List.of(),
        forecast.limit().most().gramsPerSquareMetre(),
        forecast.limit().name() + ", " + forecast.limit().citation(),
        told ? forecast.verdict().word() : null,
        words.sentence(),
        told ? WashWords.advice(forecast.verdict()) : null,
        words.notes());
  }

  /** Whether the rule of fills alone could be given. */
  public boolean ruleOnly() {
    return byHalfTime.isEmpty();
  }

  /** Whether it is the printed way of that short name. */
  public boolean follows(WashMethod way) {
    return way.slug().equals(method);
  }

  private static Map<String, List<Double>> residues(WashForecast forecast) {
    Map<String, List<Double>> residues = new LinkedHashMap<>();
    for (ResidueForecast one : forecast.byHalfTime()) {
      residues.put(
          "halfTime" + one.basis().ordinary().toSeconds() + "Seconds", masses(one.residues()));
    }
    return residues;
  }

  private static List<Double> masses(List<ArealMass> masses) {
    return masses.stream().map(ArealMass::gramsPerSquareMetre).toList();
  }
}
