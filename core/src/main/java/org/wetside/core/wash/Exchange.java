package org.wetside.core.wash;

import org.wetside.core.quantity.Concentration;

/**
 * Solves C_f' = −k·(C_f − C), C' = r·(C_f − C) − q·C exactly.
 *
 * <p>The matrix has two real eigenvalues, fast < slow ≤ 0. Its exponential is written as a sum of
 * terms that are never negative, so that nothing cancels and the small strengths at the end of a
 * long wash keep their digits.
 *
 * @param ratePerSecond k, above 0
 * @param backPerSecond r, above 0
 * @param awayPerSecond q, at least 0
 */
record Exchange(double ratePerSecond, double backPerSecond, double awayPerSecond) {
  InWash after(double film, double water, double seconds) {
    double k = ratePerSecond;
    double r = backPerSecond;
    double q = awayPerSecond;
    double halfDifference = (r + q - k) / 2;
    double root = Math.hypot(halfDifference, Math.sqrt(k * r));
    double fast = -(k + r + q) / 2 - root;
    double slow = k * q / fast; // the determinant is k·q; exactly 0 in standing water
    double spread = 2 * root;

    // a₁₁ − fast and slow − a₁₁: their product is k·r, so the smaller follows from the larger.
    double larger = Math.abs(halfDifference) + root;
    double smaller = k * r / larger;
    double above = halfDifference >= 0 ? larger : smaller;
    double below = halfDifference >= 0 ? smaller : larger;

    double slowLeft = Math.exp(slow * seconds);
    double fastLeft = Math.exp(fast * seconds);
    double gap = slowLeft * -Math.expm1(-spread * seconds); // slowLeft − fastLeft
    double inFilm = ((above * slowLeft + below * fastLeft) * film + k * gap * water) / spread;
    double inWater = (r * gap * film + (below * slowLeft + above * fastLeft) * water) / spread;
    return new InWash(
        Concentration.ofGramsPerLitre(inFilm), Concentration.ofGramsPerLitre(inWater));
  }
}
