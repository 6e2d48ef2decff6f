package org.wetside.web.wash;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.app.wash.WashAnswer;
import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.wash.ResidueForecast;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WashMethod;
import org.wetside.core.wash.WashVerdict;
import org.wetside.core.wash.WaterChange;

/** A wash in words: what is done, what it leaves, and how far that is to be believed. */
final class WashWords {
  private final WashAnswer answer;
  private final WashForecast forecast;
  private final Units units;

  WashWords(WashAnswer answer, Units units) {
    this.answer = answer;
    this.forecast = answer.forecast();
    this.units = units;
  }

  String slug() {
    return answer
        .method()
        .map(WashMethod::slug)
        .orElse(first().flow().litresPerMinute() > 0 ? WashQuery.RUNNING : WashQuery.FILLS);
  }

  String name() {
    if (answer.method().isPresent()) {
      return answer.method().get().name();
    }
    String fill = units.words(first().water());
    if (first().flow().litresPerMinute() > 0) {
      return "Running water "
          + clock(first().dwell())
          + ", "
          + Figure.of(first().flow().litresPerMinute())
          + " L/min through "
          + fill;
    }
    int fills = forecast.question().changes().size();
    return fills
        + (fills == 1 ? " fill of " : " fills of ")
        + fill
        + (answer.dwellSaid() ? ", " + clock(first().dwell()) + " each" : "");
  }

  /** What stays on the film, against the limit. */
  String sentence() {
    if (!answer.dwellSaid()) {
      return name()
          + ": "
          + Figure.of(forecast.equilibrium().get(forecast.equilibrium().size() - 1).gramsPerLitre())
          + " g/L by the rule of fills, which takes film and water as come to one strength: the best"
          + " there can be, not what is on the film. Say how long a fill stays.";
    }
    return name()
        + ": at least "
        + span()
        + " g/m² of thiosulfate stay on the film; the limit is "
        + Figure.of(forecast.limit().most().gramsPerSquareMetre())
        + " g/m². "
        + advice(forecast.verdict());
  }

  /** From the least to the most that the half-times on file leave. */
  private String span() {
    List<String> ends =
        forecast.byHalfTime().stream()
            .map(ResidueForecast::atEnd)
            .sorted()
            .map(ArealMass::gramsPerSquareMetre)
            .map(Figure::of)
            .distinct()
            .toList();
    return ends.size() == 1 ? ends.get(0) : ends.get(0) + " to " + ends.get(ends.size() - 1);
  }

  static String advice(WashVerdict verdict) {
    return switch (verdict) {
      case ABOVE -> "Too much by either half-time: let each fill stay longer, or change it more.";
      case HALF_TIMES_DISAGREE ->
          "The two half-times on file disagree about it: wash as if the slower were right.";
      case BELOW ->
          "Below it by both half-times, which does not prove the film clean: the"
              + " residual-thiosulfate test (HT-2) does.";
    };
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (answer.dwellSaid()) {
      notes.add(
          "A lower bound by a model of two liquids: what the gelatine adsorbs, what a hardener"
              + " holds back and what dries from the clinging water are not in it.");
    }
    if (forecast.standing()) {
      notes.add(
          "The rule of fills, "
              + units.words(forecast.question().carried().total())
              + " carried over into each fill, holds only after many half-times (volumes: CH-S30).");
    }
    if (answer.method().filter(WashMethod::hasAid).isPresent()) {
      notes.add("The model reckons the wash aid as plain water: what it speeds up is not in it.");
    }
    if (!answer.startSaid()) {
      notes.add(
          "The fixer is taken at "
              + Figure.of(forecast.question().start().gramsPerLitre())
              + " g/L, the worked example of CH-S30; many are stronger, and what is left grows in"
              + " proportion.");
    }
    if (forecast
            .byHalfTime()
            .get(0)
            .halfTime()
            .compareTo(forecast.byHalfTime().get(0).basis().ordinary())
        > 0) {
      notes.add(
          "Half-times are lengthened for water of "
              + units.words(forecast.question().water())
              + " by a rule that is printed for prints (RL30, DV-S15): doubled at "
              + units.words(Temperature.ofCelsius(10))
              + ".");
    }
    return List.copyOf(notes);
  }

  private WaterChange first() {
    return forecast.question().changes().get(0);
  }

  static String clock(Duration time) {
    long seconds = Math.round(time.toMillis() / 1000.0);
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
