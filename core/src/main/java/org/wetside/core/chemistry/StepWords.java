package org.wetside.core.chemistry;

import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;

/** What the words of a step say: whether it is water, and how warm. */
public final class StepWords {
  private StepWords() {}

  /** Water to make up, water to begin with, or something else. */
  public static FormulaStep.Kind kind(String ingredient) {
    String words = ' ' + ingredient.toLowerCase(Locale.ROOT).replace(',', ' ') + ' ';
    if (!words.contains(" water ")) {
      return FormulaStep.Kind.INGREDIENT;
    }
    return words.contains(" to make ") ? FormulaStep.Kind.WATER_TO_MAKE : FormulaStep.Kind.WATER;
  }

  /** How warm, from words such as {@code water 50-52 C}; the Celsius figure counts. */
  public static Optional<TemperatureRange> warmth(String ingredient) {
    String[] words = ingredient.replace("°", "").split(" ", -1);
    for (int i = 1; i < words.length; i++) {
      if (words[i].equals("C") && !words[i - 1].isEmpty()) {
        String[] ends = words[i - 1].split("-", -1);
        try {
          return Optional.of(
              new TemperatureRange(
                  Temperature.ofCelsius(Double.parseDouble(ends[0])),
                  Temperature.ofCelsius(Double.parseDouble(ends[ends.length - 1]))));
        } catch (IllegalArgumentException notOne) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }
}
