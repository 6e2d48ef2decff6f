package org.wetside.cli;

import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/** Figures of a view in the words of the terminal, which are metric. */
final class Metric {
  private Metric() {}

  static String volume(double millilitres) {
    return Units.METRIC.words(Volume.ofMillilitres(millilitres));
  }

  static String degrees(double celsius) {
    return Units.METRIC.words(Temperature.ofCelsius(celsius));
  }

  static String bytes(long bytes) {
    return bytes / 1000 + " kB";
  }
}
