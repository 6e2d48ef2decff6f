package org.wetside.app.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;

/** The baths as they were read, against their bands and against each other. */
final class TemperatureChecks {
  /** Farther apart than this risks reticulation (common practice). */
  private static final double APART_KELVINS = 3;

  /** Less than this is rounding. */
  private static final double ROUNDING = 1e-6;

  private final Pour pour;

  TemperatureChecks(Pour pour) {
    this.pour = pour;
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    Map<Integer, Temperature> read = new LinkedHashMap<>();
    baths()
        .forEach(
            (name, step) -> {
              Optional<Pour.Read> last = last(name);
              checks.add(one(step, last));
              if (last.isPresent() && isHeldWithOthers(pour.steps().get(step))) {
                read.put(step, last.get().corrected());
              }
            });
    apart(read).ifPresent(checks::add);
    return checks;
  }

  /** Each bath once, under the first step it is poured for; water of one kind is one bath. */
  private Map<String, Integer> baths() {
    Map<String, Integer> baths = new LinkedHashMap<>();
    for (int i = 0; i < pour.steps().size(); i++) {
      if (pour.steps().get(i).kind().wet()) {
        baths.putIfAbsent(pour.bath(i), i);
      }
    }
    return baths;
  }

  private Optional<Pour.Read> last(String bath) {
    return pour.readings().stream()
        .filter(reading -> pour.bath(reading.step()).equals(bath))
        .reduce((earlier, later) -> later);
  }

  /**
   * Where a band is wider than the rule, as for the washes of colour film, the band alone counts.
   */
  private static boolean isHeldWithOthers(Step step) {
    return step.band()
        .map(band -> band.high().minus(band.low()).kelvins() <= 2 * APART_KELVINS)
        .orElse(true);
  }

  private Check one(int step, Optional<Pour.Read> reading) {
    Optional<TemperatureRange> band = pour.steps().get(step).band();
    String wanted =
        band.map(range -> "It is to have " + pour.units().words(range) + ".").orElse("");
    if (reading.isEmpty()) {
      return check(
          step, ": not read", CheckState.OPEN, ("Read it before the pour. " + wanted).strip());
    }
    String words = ": " + words(reading.get());
    Temperature has = reading.get().corrected();
    boolean fits = band.map(range -> range.contains(has)).orElse(true);
    return fits
        ? check(step, words, CheckState.DONE, "")
        : check(step, words, CheckState.WARNING, wanted + " " + toDo(step, has));
  }

  private String toDo(int step, Temperature has) {
    return pour.steps().get(step).kind().developing()
        ? "Bring it there in a water bath, or change the load to "
            + pour.units().words(has)
            + ": the time follows."
        : "Bring it there in a water bath before the first pour.";
  }

  private String words(Pour.Read reading) {
    String on = reading.thermometer().isEmpty() ? "" : " on " + reading.thermometer();
    return pour.units().words(reading.corrected())
        + (reading.raw().equals(reading.corrected()) && on.isEmpty()
            ? " as read"
            : ", read " + pour.units().words(reading.raw()) + on);
  }

  private Check check(int step, String words, CheckState state, String advice) {
    return new Check(
        CheckGroup.TEMPERATURES,
        "temperatures-" + step,
        pour.bath(step) + words,
        state,
        advice,
        Optional.of(step));
  }

  private Optional<Check> apart(Map<Integer, Temperature> read) {
    if (read.size() < 2) {
      return Optional.empty();
    }
    Comparator<Map.Entry<Integer, Temperature>> byHeat = Map.Entry.comparingByValue();
    Map.Entry<Integer, Temperature> cold = read.entrySet().stream().min(byHeat).orElseThrow();
    Map.Entry<Integer, Temperature> warm = read.entrySet().stream().max(byHeat).orElseThrow();
    double kelvins = warm.getValue().minus(cold.getValue()).kelvins();
    String apart = String.format(Locale.ROOT, "%.1f K", kelvins);
    if (kelvins <= APART_KELVINS + ROUNDING) {
      return Optional.of(
          Check.of(
              CheckGroup.TEMPERATURES,
              "temperatures-apart",
              "The baths that were read lie within " + apart,
              CheckState.DONE,
              ""));
    }
    boolean coldIsOff =
        pour.steps().get(warm.getKey()).kind().developing()
            || !pour.steps().get(cold.getKey()).kind().developing();
    int off = coldIsOff ? cold.getKey() : warm.getKey();
    return Optional.of(
        Check.of(
            CheckGroup.TEMPERATURES,
            "temperatures-apart",
            pour.bath(cold.getKey())
                + " and "
                + pour.bath(warm.getKey()).toLowerCase(Locale.ROOT)
                + " are "
                + apart
                + " apart",
            CheckState.WARNING,
            "More than 3 K apart risks reticulation (common practice). "
                + (coldIsOff ? "Warm" : "Cool")
                + " the "
                + pour.steps().get(off).kind().word()
                + (pour.steps().get(off).kind().water()
                    ? ": mix it from two waters, or let it stand in the room."
                    : ": stand its bottle in " + (coldIsOff ? "warm" : "cold") + " water.")));
  }
}
