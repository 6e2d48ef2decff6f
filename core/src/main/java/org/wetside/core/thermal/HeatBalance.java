package org.wetside.core.thermal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;

/**
 * Solves a {@link TemperingQuestion}: masses add up to the mass of the total at the target, and
 * heat given equals heat taken, with one specific heat for everything.
 */
final class HeatBalance {
  /** Closer than this a water counts as having the temperature wanted. */
  private static final double SAME_KELVINS = 1e-9;

  /** The search for the nearest temperature halves 100 K this often: far below a microkelvin. */
  private static final int HALVINGS = 60;

  private final TemperingQuestion question;
  private final double fixedGrams;
  private final double fixedGramCelsius;
  private final double vesselGrams;

  HeatBalance(TemperingQuestion question) {
    this.question = question;
    this.fixedGrams = question.countedIn().stream().mapToDouble(Liquid::grams).sum();
    this.vesselGrams = question.vessel().map(Vessel::gramsOfWater).orElse(0.0);
    double liquidHeat =
        question.countedIn().stream()
            .mapToDouble(part -> part.grams() * part.temperature().celsius())
            .sum();
    double vesselHeat =
        question.vessel().map(v -> v.gramsOfWater() * v.temperature().celsius()).orElse(0.0);
    this.fixedGramCelsius = liquidHeat + vesselHeat;
  }

  Tempering solve() {
    double waterGrams = waterGramsAt(question.target());
    double wanted = neededCelsius(question.target().celsius());
    Optional<List<Liquid>> pour = pourAt(wanted, waterGrams);
    if (pour.isPresent()) {
      return new Tempering.Reached(pour.get(), Temperature.ofCelsius(wanted), question.total());
    }
    WaterAtHand best = nearestWater(wanted);
    Temperature nearest = mixedWith(best.temperature().celsius());
    return new Tempering.CannotBeReached(
        asTemperature(wanted), nearest, List.of(poured(best, waterGramsAt(nearest))));
  }

  /** The temperature of the whole when all water is that one. */
  Temperature withOnly(WaterAtHand water) {
    return mixedWith(water.temperature().celsius());
  }

  /** Water that fills up to the total once everything has that temperature, in grams. */
  private double waterGramsAt(Temperature mixed) {
    return WaterDensity.grams(question.total().millilitres(), mixed) - fixedGrams;
  }

  /** The temperature that the water added must have for the whole to get to {@code mixed}. */
  private double neededCelsius(double mixed) {
    double water = waterGramsAt(Temperature.ofCelsius(mixed));
    return ((water + fixedGrams + vesselGrams) * mixed - fixedGramCelsius) / water;
  }

  /** The first pair of waters, in order of preference, between which the temperature lies. */
  private Optional<List<Liquid>> pourAt(double wanted, double waterGrams) {
    List<WaterAtHand> waters = question.waters();
    for (WaterAtHand water : waters) {
      if (Math.abs(water.temperature().celsius() - wanted) < SAME_KELVINS) {
        return Optional.of(List.of(poured(water, waterGrams)));
      }
    }
    for (int second = 1; second < waters.size(); second++) {
      for (int first = 0; first < second; first++) {
        List<WaterAtHand> pair = new ArrayList<>(List.of(waters.get(first), waters.get(second)));
        pair.sort(Comparator.comparing(WaterAtHand::temperature));
        double cold = pair.get(0).temperature().celsius();
        double hot = pair.get(1).temperature().celsius();
        if (cold < wanted && wanted < hot) {
          double hotGrams = waterGrams * (wanted - cold) / (hot - cold);
          return Optional.of(
              List.of(poured(pair.get(0), waterGrams - hotGrams), poured(pair.get(1), hotGrams)));
        }
      }
    }
    return Optional.empty();
  }

  private WaterAtHand nearestWater(double wanted) {
    return question.waters().stream()
        .min(Comparator.comparingDouble(w -> Math.abs(w.temperature().celsius() - wanted)))
        .orElseThrow();
  }

  /** The temperature of the whole when all water has {@code water} °C; by bisection. */
  private Temperature mixedWith(double water) {
    if (fixedGrams + vesselGrams == 0) {
      return Temperature.ofCelsius(water);
    }
    double low = 0;
    double high = 100;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (neededCelsius(middle) < water) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Temperature.ofCelsius((low + high) / 2);
  }

  private static Liquid poured(WaterAtHand water, double grams) {
    return new Liquid(
        water.name(), WaterDensity.volumeOf(grams, water.temperature()), water.temperature());
  }

  private static Temperature asTemperature(double celsius) {
    return Temperature.ofCelsius(Math.max(celsius, -273.15));
  }
}
