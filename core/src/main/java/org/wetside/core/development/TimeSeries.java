package org.wetside.core.development;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.TimeSpan;

/**
 * Times of one source that differ only in temperature, coldest first.
 *
 * <p>Kernel: temperatures in °C (from the printed Fahrenheit where that is what was printed; the
 * arithmetic is linear in either), times as ln(seconds).
 */
final class TimeSeries {
  /** Closer than this two temperatures are the same printed one. */
  static final double SAME_TEMPERATURE_K = 0.05;

  private static final double LN_2 = Math.log(2);

  private final List<TimeEntry> entries;
  private final double[] celsius;
  private final double[] lnSeconds;
  private final double slopePerK;

  /** Index, NaN when not stated. */
  private final double index;

  /** Parts of water for one of concentrate, NaN when the dilution has no known parts. */
  private final double water;

  private final String dilutionLabel;

  /** From entries that all have a temperature and differ in it. */
  TimeSeries(List<TimeEntry> unordered) {
    List<TimeEntry> sorted = new ArrayList<>(unordered);
    sorted.sort(Comparator.comparing(entry -> entry.temperature().orElseThrow()));
    entries = List.copyOf(sorted);
    celsius = new double[entries.size()];
    lnSeconds = new double[entries.size()];
    for (int i = 0; i < celsius.length; i++) {
      celsius[i] = entries.get(i).temperature().orElseThrow().celsius();
      lnSeconds[i] = lnSeconds(entries.get(i));
    }
    slopePerK = leastSquaresSlope(celsius, lnSeconds);
    index = first().exposureIndex().map(ExposureIndex::isoArithmetic).orElse(Double.NaN);
    water = water(first().dilution());
    dilutionLabel = first().dilution().label();
  }

  /** ln of the time in seconds; for a printed range of its geometric middle. */
  static double lnSeconds(TimeEntry entry) {
    double shortest = Math.log(TimeSpan.toSeconds(entry.time()));
    return entry
        .longest()
        .map(longest -> (shortest + Math.log(TimeSpan.toSeconds(longest))) / 2)
        .orElse(shortest);
  }

  private static double leastSquaresSlope(double[] x, double[] y) {
    double meanX = mean(x);
    double meanY = mean(y);
    double xy = 0;
    double xx = 0;
    for (int i = 0; i < x.length; i++) {
      xy += (x[i] - meanX) * (y[i] - meanY);
      xx += (x[i] - meanX) * (x[i] - meanX);
    }
    return xx == 0 ? Double.NaN : xy / xx;
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  TimeEntry entry(int i) {
    return entries.get(i);
  }

  TimeEntry first() {
    return entries.get(0);
  }

  int size() {
    return celsius.length;
  }

  double celsius(int i) {
    return celsius[i];
  }

  double lnSeconds(int i) {
    return lnSeconds[i];
  }

  double coldest() {
    return celsius[0];
  }

  double warmest() {
    return celsius[celsius.length - 1];
  }

  boolean spans(double atCelsius) {
    return atCelsius > coldest() - SAME_TEMPERATURE_K && atCelsius < warmest() + SAME_TEMPERATURE_K;
  }

  /** Change of ln(time) per kelvin by least squares, negative; NaN with one temperature. */
  double slopePerK() {
    return slopePerK;
  }

  /** The entry printed at this temperature, or -1. */
  int at(double atCelsius) {
    for (int i = 0; i < celsius.length; i++) {
      if (Math.abs(celsius[i] - atCelsius) < SAME_TEMPERATURE_K) {
        return i;
      }
    }
    return -1;
  }

  /** Index of the neighbour below a temperature strictly inside the span. */
  int below(double atCelsius) {
    int i = 0;
    while (i < celsius.length - 2 && celsius[i + 1] <= atCelsius) {
      i++;
    }
    return i;
  }

  /** ln(seconds) at a temperature of the span, linear between the neighbours. */
  double lnSecondsAt(double atCelsius) {
    int exact = at(atCelsius);
    if (exact >= 0) {
      return lnSeconds[exact];
    }
    int low = below(atCelsius);
    double share = (atCelsius - celsius[low]) / (celsius[low + 1] - celsius[low]);
    return lnSeconds[low] + share * (lnSeconds[low + 1] - lnSeconds[low]);
  }

  /** Index of the printed temperature nearest to this one. */
  int nearest(double atCelsius) {
    int best = 0;
    for (int i = 1; i < celsius.length; i++) {
      if (Math.abs(celsius[i] - atCelsius) < Math.abs(celsius[best] - atCelsius)) {
        best = i;
      }
    }
    return best;
  }

  private static double water(Dilution dilution) {
    return dilution.ratio().map(DilutionRatio::waterPerConcentrate).orElse(Double.NaN);
  }

  /** {@link Dilution#matches}, prepared for many comparisons. */
  boolean sameDilution(Dilution dilution) {
    double asked = water(dilution);
    return (Double.isNaN(water) || Double.isNaN(asked))
        ? first().dilution().matches(dilution)
        : Math.abs(water - asked) < 1e-9;
  }

  boolean sameDilution(TimeSeries other) {
    return (Double.isNaN(water) || Double.isNaN(other.water))
        ? first().dilution().matches(other.first().dilution())
        : Math.abs(water - other.water) < 1e-9;
  }

  String dilutionLabel() {
    return dilutionLabel;
  }

  boolean hasIndex() {
    return !Double.isNaN(index);
  }

  /** Exposure index, NaN when not stated. */
  double index() {
    return index;
  }

  /** log2 of the ratio of two indexes; nominal values such as 1250 and 1280 count as equal. */
  static double stopsBetween(double from, double to) {
    if (from == to) {
      return 0;
    }
    double stops = Math.log(to / from) / LN_2;
    return Math.abs(stops) < 0.05 ? 0 : stops;
  }

  boolean sameIndex(double other) {
    double ratio = index / other;
    return ratio > 0.966 && ratio < 1.035;
  }
}
