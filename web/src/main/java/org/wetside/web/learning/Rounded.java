package org.wetside.web.learning;

/** Figures as they leave: no more digits than they are worth. */
final class Rounded {
  private Rounded() {}

  static double thousandths(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
