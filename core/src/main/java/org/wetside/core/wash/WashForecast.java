package org.wetside.core.wash;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Volume;

/**
 * What a wash comes to.
 *
 * @param question what was asked
 * @param water all the water it takes
 * @param inWater how long the film is in water
 * @param equilibrium strength after each fill by {@link EquilibriumRule}: the best there can be
 * @param equilibriumResidues the same as mass on the film
 * @param byHalfTime by the two liquids, one for each half-time on file
 * @param limit what may stay on the film
 */
public record WashForecast(
    WashQuestion question,
    Volume water,
    Duration inWater,
    List<Concentration> equilibrium,
    List<ArealMass> equilibriumResidues,
    List<ResidueForecast> byHalfTime,
    ResidueLimit limit) {

  /** Foresees a wash. */
  public static WashForecast of(WashQuestion question, WashFigures figures) {
    List<WaterChange> changes = question.changes();
    List<Concentration> equilibrium =
        EquilibriumRule.afterEach(
            question.start(),
            question.carried().total(),
            changes.stream().map(WaterChange::water).toList());
    List<ResidueForecast> byHalfTime = new ArrayList<>();
    for (HalfTime basis : figures.halfTimes()) {
      byHalfTime.add(by(basis, figures.cold().lengthened(basis, question.water()), question));
    }
    return new WashForecast(
        question,
        changes.stream().map(WaterChange::used).reduce(Volume.ZERO, Volume::plus),
        changes.stream().map(WaterChange::dwell).reduce(Duration.ZERO, Duration::plus),
        equilibrium,
        equilibrium.stream().map(left -> InWash.onFilm(left, question.carried())).toList(),
        List.copyOf(byHalfTime),
        figures.limit());
  }

  private static ResidueForecast by(HalfTime basis, Duration halfTime, WashQuestion question) {
    List<InWash> states =
        new TwoLiquids(question.carried(), halfTime)
            .afterEach(question.start(), question.changes());
    return new ResidueForecast(
        basis,
        halfTime,
        states,
        states.stream().map(state -> state.residue(question.carried())).toList());
  }

  /** From the first pour to the last drain: a pour before each change of water. */
  public Duration length() {
    return inWater.plus(Step.POUR_IN.multipliedBy(question.changes().size()));
  }

  /** Whether all water stands: only then has the rule of fills something to say. */
  public boolean standing() {
    return question.changes().stream().allMatch(one -> one.flow().litresPerMinute() == 0);
  }

  /** What the rule of half-times leaves on the film, in water that is always clean. */
  public ArealMass byHalfTimeRule(ResidueForecast forecast) {
    double left = HalfTimeRule.left(inWater, forecast.halfTime());
    return InWash.onFilm(question.start().times(left), question.carried());
  }

  /** The larger of the residues at the end: the half-times on file disagree. */
  public ArealMass mostAtEnd() {
    return byHalfTime.stream()
        .map(ResidueForecast::atEnd)
        .reduce((one, other) -> one.compareTo(other) >= 0 ? one : other)
        .orElseThrow();
  }

  /** What the model can say of the limit. */
  public WashVerdict verdict() {
    long above = byHalfTime.stream().filter(one -> one.atEnd().compareTo(limit.most()) > 0).count();
    return above == 0
        ? WashVerdict.BELOW
        : above == byHalfTime.size() ? WashVerdict.ABOVE : WashVerdict.HALF_TIMES_DISAGREE;
  }
}
