package org.wetside.core.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.sensitometry.NegativeKind;

/**
 * Pixels here are invented by the law that the model states, P = dark + gain·10^(−exponent·D), so
 * that the densities that must come back are known.
 */
class CalibrationTest {
  private static final LocalDate JANUARY = LocalDate.of(2026, 1, 3);
  private static final double[] DENSITIES = {
    0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95, 1.1, 1.25, 1.4, 1.55, 1.7
  };

  private static double pixel(double density, double gain) {
    return 60 + gain * Math.pow(10, -0.97 * density);
  }

  private static Calibration grey(double gain, Calibration.Method method) {
    List<SeenStep> steps = new ArrayList<>();
    for (int i = 0; i < DENSITIES.length; i++) {
      steps.add(
          new SeenStep(
              String.valueOf(i + 1),
              OpticalDensity.of(DENSITIES[i]),
              Means.ofGrey(pixel(DENSITIES[i], gain))));
    }
    return new Calibration(JANUARY, "T1", method, steps, "");
  }

  private static double read(DensityScale scale, double pixel) {
    PatchDensity density = scale.densityOf(Means.ofGrey(pixel), NegativeKind.SILVER);
    assertThat(density).isInstanceOf(PatchDensity.Read.class);
    return ((PatchDensity.Read) density).density();
  }

  @Test
  void readsTheDensityBetweenItsStepsByFormulaAndByTable() {
    for (double density : new double[] {0.11, 0.73, 1.62}) {
      assertThat(read(grey(52000, Calibration.Method.FORMULA).scale(), pixel(density, 52000)))
          .isCloseTo(density, within(1e-6));
      assertThat(read(grey(52000, Calibration.Method.TABLE).scale(), pixel(density, 52000)))
          .isCloseTo(density, within(0.002));
    }
  }

  @Test
  void readsNothingBeyondItsClearestAndDensestSteps() {
    DensityScale scale = grey(52000, Calibration.Method.FORMULA).scale();

    assertThat(scale.clearest()).isEqualTo(0.05);
    assertThat(scale.densest()).isEqualTo(1.7);
    assertThat(scale.densityOf(Means.ofGrey(pixel(1.72, 52000)), NegativeKind.SILVER))
        .isEqualTo(
            new PatchDensity.NotRead("darker than the densest usable step, density 1.7", true));
    assertThat(scale.densityOf(Means.ofGrey(pixel(0.03, 52000)), NegativeKind.SILVER))
        .isEqualTo(
            new PatchDensity.NotRead("brighter than the clearest usable step, density 0.05"));
  }

  /** Steps that the instrument no longer tells apart end what it can read. */
  @Test
  void aStepNoDarkerThanTheOneBeforeIsNotUsed() {
    List<SeenStep> steps = new ArrayList<>(grey(52000, Calibration.Method.FORMULA).steps());
    steps.add(new SeenStep("13", OpticalDensity.of(1.85), Means.ofGrey(pixel(1.7, 52000) + 0.5)));
    DensityScale scale =
        new Calibration(JANUARY, "T1", Calibration.Method.FORMULA, steps, "").scale();

    assertThat(scale.densest()).isEqualTo(1.7);
    StepFit last = scale.fits().get(12);
    assertThat(last.used()).isFalse();
    assertThat(last.residual()).isEmpty();
    assertThat(scale.fits().subList(0, 12)).allMatch(StepFit::used);
    assertThat(scale.largestResidual()).isLessThan(1e-6);
  }

  /** A lamp that gives 10^-0.02 of its light makes every patch look 0.02/0.97 denser. */
  @Test
  void driftIsWhatTheSamePatchWouldHaveBeenReadAsBefore() {
    double later = 52000 * Math.pow(10, -0.02);
    Drift drift =
        Drift.between(
            grey(52000, Calibration.Method.FORMULA), grey(later, Calibration.Method.FORMULA));

    assertThat(drift.steps()).hasSizeGreaterThanOrEqualTo(10);
    assertThat(drift.steps().get(0).moved()).isCloseTo(-0.02 / 0.97, within(1e-3));
    assertThat(drift.largest().orElseThrow()).isCloseTo(0.02 / 0.97, within(2e-3));
  }

  @Test
  void anotherChannelHasNoDriftAndIsNotRead() {
    Calibration grey = grey(52000, Calibration.Method.FORMULA);
    Calibration colour = colour();

    assertThat(Drift.between(grey, colour).largest()).isEmpty();
    assertThatThrownBy(() -> grey.scale().densityOf(Means.ofColours(9, 9, 9), NegativeKind.SILVER))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("seen in green")
        .hasMessageContaining("made in grey");
  }

  private static Calibration colour() {
    List<SeenStep> steps = new ArrayList<>();
    for (int i = 0; i < DENSITIES.length; i++) {
      double green = pixel(DENSITIES[i], 52000);
      steps.add(
          new SeenStep(
              String.valueOf(i + 1),
              OpticalDensity.of(DENSITIES[i]),
              Means.ofColours(green * 0.9, green, green * 0.8)));
    }
    return new Calibration(JANUARY, "T1", Calibration.Method.FORMULA, steps, "");
  }

  @Test
  void stainedAndColourNegativesAreRefusedWhenSaidAndWhenSeen() {
    DensityScale scale = colour().scale();
    double green = pixel(0.7, 52000);

    assertThat(
            scale.densityOf(Means.ofColours(green * 0.9, green, green * 0.8), NegativeKind.SILVER))
        .isInstanceOf(PatchDensity.Read.class);
    PatchDensity stained =
        scale.densityOf(Means.ofColours(green * 0.9, green, green * 0.6), NegativeKind.SILVER);
    assertThat(((PatchDensity.NotRead) stained).reason()).contains("stained and colour");
    for (NegativeKind kind : List.of(NegativeKind.STAINED, NegativeKind.COLOUR)) {
      assertThatThrownBy(
              () -> scale.densityOf(Means.ofColours(green * 0.9, green, green * 0.8), kind))
          .isInstanceOf(BadValueException.class)
          .hasMessageContaining(kind.word());
    }
  }

  @Test
  void aDensitometerShowsHowFarOffItIs() {
    Calibration calibration =
        new Calibration(
            JANUARY,
            "T1",
            Calibration.Method.AS_SHOWN,
            List.of(shown("1", 0.05, 0.06), shown("2", 1.0, 0.98)),
            "");
    DensityScale scale = calibration.scale();

    assertThat(scale.largestResidual()).isCloseTo(0.02, within(1e-9));
    Drift drift =
        Drift.between(
            calibration,
            new Calibration(
                JANUARY,
                "t1",
                Calibration.Method.AS_SHOWN,
                List.of(shown("1", 0.05, 0.06), shown("2", 1.0, 1.01)),
                ""));
    assertThat(drift.largest().orElseThrow()).isCloseTo(0.03, within(1e-9));
  }

  private static SeenStep shown(String label, double density, double shown) {
    return new SeenStep(
        label, OpticalDensity.of(density), new SeenDensity(OpticalDensity.of(shown)));
  }

  @Test
  void tooFewStepsMixedChannelsAndAWrongMethodAreRefusedEachInItsWords() {
    List<SeenStep> steps = grey(52000, Calibration.Method.FORMULA).steps();

    assertThatThrownBy(
            () ->
                new Calibration(JANUARY, "T1", Calibration.Method.FORMULA, steps.subList(0, 3), "")
                    .scale())
        .hasMessageContaining("usable steps")
        .hasMessageContaining("at least 4");
    assertThatThrownBy(
            () ->
                new Calibration(JANUARY, "T1", Calibration.Method.TABLE, steps.subList(0, 9), "")
                    .scale())
        .hasMessageContaining("at least 10");
    assertThatThrownBy(
            () ->
                new Calibration(
                    JANUARY,
                    "T1",
                    Calibration.Method.FORMULA,
                    List.of(
                        steps.get(0),
                        new SeenStep("x", OpticalDensity.of(1), Means.ofColours(1, 2, 3))),
                    ""))
        .hasMessageContaining("seen in green")
        .hasMessageContaining("first was seen in grey");
    assertThatThrownBy(() -> new Calibration(JANUARY, "T1", Calibration.Method.AS_SHOWN, steps, ""))
        .hasMessageContaining("only a densitometer");
    assertThatThrownBy(() -> Calibration.Method.fromWord("spline"))
        .hasMessageContaining("formula or table");
  }
}
