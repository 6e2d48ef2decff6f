package org.wetside.app.formula;

import java.util.Locale;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.chemistry.PlannedStep;
import org.wetside.core.chemistry.Weighing;
import org.wetside.core.quantity.TemperatureRange;

/** How a step is done, in words: what to weigh, what to make instead, which measure to take. */
public final class HowTo {
  private HowTo() {}

  /** One or two sentences, metric. */
  public static String of(PlannedStep step) {
    if (step.weighing().isEmpty()) {
      return step.reading().map(HowTo::reading).orElse("");
    }
    Weighing weighing = step.weighing().get();
    if (weighing instanceof Weighing.Direct direct) {
      return "weigh "
          + grams(direct.shown().grams())
          + ", good to ±"
          + percent(direct.errorPercent());
    }
    if (weighing instanceof Weighing.AsSolution solution) {
      return "too little for this balance (±"
          + percent(solution.errorPercent())
          + "): dissolve "
          + grams(solution.dissolve().grams())
          + " in water to make "
          + millilitres(solution.makes().millilitres())
          + " ("
          + number(solution.strength().percent(), 1)
          + " %, "
          + solution.strength().standing().word()
          + ": "
          + solution.strength().note()
          + "), take "
          + millilitres(solution.take().millilitres())
          + " of it; "
          + reading(solution.reading())
          + ". The first water is less by that much";
    }
    Weighing.TooLittle little = (Weighing.TooLittle) weighing;
    return "too little for this balance (±"
        + percent(little.errorPercent())
        + "): mix at least "
        + millilitres(Math.ceil(little.leastBatch().millilitres() - 1e-6))
        + ", or weigh on a balance that shows "
        + grams(little.finerStep().grams());
  }

  /** Behind the name of what goes in so. */
  static String solution(double percent) {
    return ", as a solution of " + number(percent, 1) + " %";
  }

  private static String reading(Measures.Reading reading) {
    return (reading.fillings() > 1 ? reading.fillings() + " times the " : "in the ")
        + reading.measure().name()
        + ", ±"
        + number(reading.error().millilitres(), 3)
        + " mL (±"
        + percent(reading.errorPercent())
        + ")";
  }

  /** A temperature or a band as {@code 50-52 °C}, which a step's words are read back from. */
  static String celsius(TemperatureRange band) {
    String low = number(band.low().celsius(), 1);
    String high = number(band.high().celsius(), 1);
    return (low.equals(high) ? low : low + "-" + high) + " °C";
  }

  /** Grams as a balance shows them. */
  public static String grams(double grams) {
    return number(grams, grams < 1 ? 4 : grams < 10 ? 3 : 2) + " g";
  }

  private static String millilitres(double millilitres) {
    return number(millilitres, 1) + " mL";
  }

  private static String percent(double percent) {
    return number(percent, percent < 1 ? 2 : 1) + " %";
  }

  private static String number(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    int end = text.length();
    while (text.indexOf('.') >= 0 && (text.charAt(end - 1) == '0' || text.charAt(end - 1) == '.')) {
      boolean point = text.charAt(end - 1) == '.';
      end--;
      if (point) {
        break;
      }
    }
    return text.substring(0, end);
  }
}
