package org.wetside.core.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The front door: what all judged rolls together say of each film in each developer.
 *
 * <p>θ of a film in a developer is normal about μ with {@link Scatter#pair()}, μ itself about 0
 * with {@link Scatter#common()}; a roll says θ plus its own deviation plus the error of its
 * reading. All is normal, so the belief after all rolls is exact: one system of linear equations
 * for μ and every θ, whose matrix is the inverse of their covariance. The order of the rolls does
 * not matter.
 */
public final class Learned {
  private final Map<FilmInDeveloper, Integer> places;
  private final int[] rolls;
  private final RealVector means;
  private final RealMatrix covariance;
  private final Scatter scatter;

  private Learned(
      Map<FilmInDeveloper, Integer> places,
      int[] rolls,
      RealVector means,
      RealMatrix covariance,
      Scatter scatter) {
    this.places = places;
    this.rolls = rolls;
    this.means = means;
    this.covariance = covariance;
    this.scatter = scatter;
  }

  /** From any number of rolls, none included. */
  public static Learned from(Scatter scatter, List<RollSeen> seen) {
    Map<FilmInDeveloper, Integer> places = new LinkedHashMap<>();
    for (RollSeen roll : seen) {
      places.putIfAbsent(roll.of(), places.size() + 1);
    }
    int size = places.size() + 1;
    RealMatrix precision = new Array2DRowRealMatrix(size, size);
    RealVector weighted = new ArrayRealVector(size);
    double perPair = 1 / (scatter.pair() * scatter.pair());
    precision.setEntry(0, 0, 1 / (scatter.common() * scatter.common()) + perPair * places.size());
    for (int at = 1; at < size; at++) {
      precision.setEntry(0, at, -perPair);
      precision.setEntry(at, 0, -perPair);
      precision.setEntry(at, at, perPair);
    }
    int[] rolls = new int[size];
    for (RollSeen roll : seen) {
      int at = places.getOrDefault(roll.of(), 0);
      double weight = 1 / roll.variance(scatter);
      precision.addToEntry(at, at, weight);
      weighted.addToEntry(at, weight * roll.value());
      rolls[at]++;
    }
    RealMatrix covariance = new CholeskyDecomposition(precision).getSolver().getInverse();
    return new Learned(places, rolls, covariance.operate(weighted), covariance, scatter);
  }

  /** Films in developers that rolls were seen of, in the order they were first seen. */
  public List<FilmInDeveloper> seen() {
    return new ArrayList<>(places.keySet());
  }

  /** What is believed of a film in a developer, seen or not. */
  public Belief of(FilmInDeveloper pair) {
    Integer at = places.get(pair);
    if (at == null) {
      double unseen = covariance.getEntry(0, 0) + scatter.pair() * scatter.pair();
      return new Belief(means.getEntry(0), Math.sqrt(unseen), 0);
    }
    return new Belief(means.getEntry(at), Math.sqrt(covariance.getEntry(at, at)), rolls[at]);
  }

  /** What the user's films have in common. */
  public Belief common() {
    return new Belief(means.getEntry(0), Math.sqrt(covariance.getEntry(0, 0)), 0);
  }

  /**
   * How far a roll lies from what was to be expected of it, in standard deviations of that
   * expectation: of the belief, of rolls, and of its reading, in quadrature. Properly standardised
   * only for a roll that this was not learned from.
   */
  double standardised(RollSeen roll) {
    Belief belief = of(roll.of());
    double variance = belief.sd() * belief.sd() + roll.variance(scatter);
    return (roll.value() - belief.mean()) / Math.sqrt(variance);
  }
}
