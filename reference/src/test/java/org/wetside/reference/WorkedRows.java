package org.wetside.reference;

import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.chemistry.Composition;
import org.wetside.core.chemistry.Exchange;
import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.FixingTime;
import org.wetside.core.thermal.Drift;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.core.thermal.WaterAtHand;
import org.wetside.core.thermal.WaterDensity;
import org.wetside.core.trial.ClearingRule;
import org.wetside.core.wash.EquilibriumRule;
import org.wetside.core.wash.HalfTimeRule;

/** What the program itself makes of the question of each row of {@code checks/baths.csv}. */
final class WorkedRows {
  private static final Chemicals CHEMICALS = Chemicals.open();
  private static final double SQUARE_INCHES_PER_ROLL = 80;

  private WorkedRows() {}

  /** By row, in the order in which the figures of its column {@code expected} stand. */
  static Map<String, List<Double>> all() {
    Map<String, List<Double>> rows = new LinkedHashMap<>();
    chemicals(rows);
    solutions(rows);
    temperatures(rows);
    areas(rows);
    washes(rows);
    fixers(rows);
    units(rows);
    return rows;
  }

  private static void chemicals(Map<String, List<Double>> rows) {
    rows.put("CK01", List.of(molar("Ag")));
    rows.put("CK02", List.of(molar("Na2S2O3.5H2O")));
    rows.put(
        "CK03", List.of(100 * factor("sodium sulfite anhydrous", "sodium sulfite heptahydrate")));
    rows.put(
        "CK04",
        List.of(240 * factor("sodium thiosulfate pentahydrate", "sodium thiosulfate anhydrous")));
    rows.put(
        "CK05",
        List.of(52.5 * factor("sodium carbonate monohydrate", "sodium carbonate anhydrous")));
    rows.put("CK06", List.of(25 * factor("sodium metabisulfite", "sodium bisulfite")));
    rows.put("CK07", List.of(10 * factor("potassium hydroxide", "sodium hydroxide")));
    rows.put("CK11", List.of(32 * factor("acetic acid 28%", "glacial acetic acid")));
  }

  private static void solutions(Map<String, List<Double>> rows) {
    rows.put("CK12", parts("1+19", 500));
    rows.put("CK13", parts("1+4", 600));
    rows.put(
        "CK14",
        Stream.of("1+1", "1+3", "1+9", "1+31", "1+50")
            .map(one -> parts(one, 1000).get(0))
            .toList());
  }

  private static void temperatures(Map<String, List<Double>> rows) {
    rows.put("CK08", List.of(density(25)));
    rows.put("CK09", List.of(density(50)));
    rows.put("CK10", List.of(density(20)));
    Tempering.Reached waters =
        (Tempering.Reached)
            TemperingQuestion.ofWater(
                    c(20),
                    ml(1000),
                    List.of(new WaterAtHand("cold", c(15)), new WaterAtHand("hot", c(50))))
                .answer();
    rows.put("CK16", List.of(waters.of("hot").millilitres(), waters.of("cold").millilitres()));
    rows.put("CK17", List.of(water(250, 18)));
    rows.put("CK18", List.of(water(125, 16)));
    rows.put("CK19", List.of(water(250, 26)));
    rows.put(
        "CK20",
        List.of(
            new Drift(c(26), Duration.ofMinutes(60))
                .after(c(20), Duration.ofMinutes(10))
                .celsius()));
    rows.put("CK40", List.of(Temperature.ofFahrenheit(125).celsius()));
  }

  /** The water that brings 500 mL of working solution to 20 °C. */
  private static double water(double stockMl, double stockC) {
    return new TemperingQuestion(
            c(20),
            ml(500),
            List.of(new Liquid("stock", ml(stockMl), c(stockC))),
            List.of(new WaterAtHand("cold", c(5)), new WaterAtHand("hot", c(50))),
            Optional.empty())
        .answer()
        .waterTemperature()
        .celsius();
  }

  private static void areas(Map<String, List<Double>> rows) {
    rows.put("CK21", strip(35, 1600));
    rows.put("CK22", strip(61.5, 830));
    ArealMass limit = ArealMass.ofGramsPerSquareMetre(0.014);
    rows.put(
        "CK23", List.of(limit.microgramsPerSquareCentimetre(), limit.milligramsPerSquareInch()));
    rows.put(
        "CK24",
        List.of(ArealMass.ofMilligramsPerSquareInch(0.080).microgramsPerSquareCentimetre()));
    rows.put(
        "CK25", List.of(1000 * limit.gramsOn(UnitOfUse.ofSheet(35, 1600).squareCentimetres())));
  }

  private static List<Double> strip(double widthMm, double lengthMm) {
    UnitOfUse strip = UnitOfUse.ofSheet(widthMm, lengthMm);
    return List.of(strip.squareCentimetres(), strip.rolls() * SQUARE_INCHES_PER_ROLL);
  }

  private static void washes(Map<String, List<Double>> rows) {
    double left = EquilibriumRule.left(ml(10), ml(500));
    rows.put("CK26", List.of(left, left * left, left * left * left));
    rows.put("CK27", milligrams(10, 3));
    rows.put("CK29", milligrams(2, 1));
    rows.put("CK30", List.of(HalfTimeRule.left(Duration.ofMinutes(20), Duration.ofSeconds(60))));
    rows.put("CK31", List.of(HalfTimeRule.left(Duration.ofMinutes(5), Duration.ofSeconds(15))));
  }

  private static List<Double> milligrams(double carriedMl, int fills) {
    return EquilibriumRule.afterEach(
            Concentration.ofGramsPerLitre(60), ml(carriedMl), Collections.nCopies(fills, ml(500)))
        .stream()
        .map(one -> one.gramsPerLitre() * 1000)
        .toList();
  }

  private static void fixers(Map<String, List<Double>> rows) {
    rows.put("CK36", List.of(capacity("acid fixer").of(ml(600)).rolls()));
    UnitOfUse litre = capacity("alkaline fixer").of(ml(1000));
    rows.put(
        "CK37",
        List.of(
            litre.rolls() / FilmUse.weight(BathKind.FIXER, true),
            (double) Capacity.wholeRolls(litre, UnitOfUse.ONE_ROLL, BathKind.FIXER, true)));
    Clearing fresh = clip(45);
    double spentAt = ClearingRule.spentAt(fresh).toMillis() / 1000.0;
    rows.put("CK38", List.of(fixing(fresh), spentAt, fixing(clip(spentAt))));
  }

  private static double fixing(Clearing clip) {
    return FixingTime.after(clip, Capacities.fixingTimes(false), c(20)).time().toMillis() / 1000.0;
  }

  private static Clearing clip(double seconds) {
    Duration time = Duration.ofMillis(Math.round(seconds * 1000));
    return new Clearing(time, "a film", "1+4", c(20), seconds == 45);
  }

  private static Capacity capacity(String contents) {
    return Capacities.of(
            BottleLabel.of("F", contents, BottleRole.WORKING, BathKind.FIXER, ml(1000)))
        .orElseThrow();
  }

  private static void units(Map<String, List<Double>> rows) {
    Volume quart = Volume.ofUsFluidOunces(32);
    rows.put("CK41", List.of(1000 * Volume.ofUsFluidOunces(1.5).ratioTo(quart)));
    rows.put("CK42", List.of(Mass.ofGrains(1).grams() / quart.millilitres() * 1000));
  }

  static double factor(String wanted, String held) {
    return ((Exchange.Allowed)
            CHEMICALS
                .exchanges()
                .of(CHEMICALS.substances().require(wanted), CHEMICALS.substances().require(held)))
        .factor();
  }

  private static double molar(String formula) {
    return CHEMICALS.weights().of(Composition.parse(formula)).gramsPerMole();
  }

  private static List<Double> parts(String dilution, double totalMl) {
    WorkingSolution mix = WorkingSolution.of(Dilution.parse(dilution), ml(totalMl));
    return List.of(mix.concentrate().millilitres(), mix.water().millilitres());
  }

  private static double density(double celsius) {
    return WaterDensity.kilogramsPerCubicMetre(c(celsius));
  }

  private static Temperature c(double celsius) {
    return Temperature.ofCelsius(celsius);
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }
}
