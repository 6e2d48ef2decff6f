package org.wetside.web.formula;

import org.wetside.core.chemistry.Weighing;

/**
 * A percentage solution made because what is wanted is too little for the balance.
 *
 * @param percent grams in 100 mL
 * @param strengthStanding how that strength is known
 * @param strengthNote whose choice it is
 * @param dissolveGrams for the solution
 * @param makesMl what they are made up to
 * @param takeMl how much of it holds what is wanted
 * @param measure in what that is measured
 */
public record SolutionView(
    double percent,
    String strengthStanding,
    String strengthNote,
    double dissolveGrams,
    double makesMl,
    double takeMl,
    MeasureView measure) {
  static SolutionView of(Weighing.AsSolution solution) {
    return new SolutionView(
        solution.strength().percent(),
        solution.strength().standing().word(),
        solution.strength().note(),
        solution.dissolve().grams(),
        solution.makes().millilitres(),
        solution.take().millilitres(),
        MeasureView.of(solution.reading()));
  }
}
