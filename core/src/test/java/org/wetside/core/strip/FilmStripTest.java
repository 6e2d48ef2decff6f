package org.wetside.core.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;

class FilmStripTest {
  @Test
  void aStepOfATabletIsItsDensityBehindTheClearLight() {
    StepScale tablet =
        new StepScale.TabletSteps(
            LogExposure.ofLog10LuxSeconds(-0.60),
            List.of(OpticalDensity.of(0.05), OpticalDensity.of(0.20)));
    assertThat(tablet.at(2).log10LuxSeconds()).isCloseTo(-0.80, within(1e-12));
    assertThatThrownBy(() -> tablet.at(3))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("step \"3\"", "1 to 2");
    assertThatThrownBy(() -> tablet.at(1.5)).hasMessageContaining("1.5");
  }

  /** A metered card gets 8/EI lux seconds (SE-S40): 0.02 lx·s at EI 400, a stop more twice that. */
  @Test
  void aStopInACameraIsATwofoldOfWhatWasMetered() {
    StepScale camera = new StepScale.CameraStops(ExposureIndex.of(400));
    assertThat(camera.at(0).log10LuxSeconds()).isCloseTo(Math.log10(0.02), within(1e-12));
    assertThat(camera.at(1).log10LuxSeconds()).isCloseTo(Math.log10(0.04), within(1e-12));
  }

  @Test
  void onlyACalibratedLightCountsAsCalibratedAndStopsBelongToTheCamera() {
    assertThat(strip(StepLight.CALIBRATED).curveReadings().calibrated()).isTrue();
    assertThat(strip(StepLight.ESTIMATED).curveReadings().calibrated()).isFalse();
    assertThat(StepLight.RELATIVE.givesSpeed()).isFalse();
    assertThatThrownBy(() -> strip(StepLight.CAMERA)).hasMessageContaining("stops");
  }

  private static FilmStrip strip(StepLight light) {
    return new FilmStrip(
        "TRI-X 400",
        "D-76",
        Dilution.parse("1+1"),
        Duration.ofMinutes(9),
        Optional.empty(),
        Vessel.SMALL_TANK,
        Optional.empty(),
        light,
        new StepScale.LogExposures(),
        List.of(reading(-3, 0.2), reading(-2, 0.5), reading(-1, 1.0)),
        Optional.of(OpticalDensity.of(0.2)),
        0.01,
        MadeWith.NOT_SAID,
        "");
  }

  private static StripReading reading(double place, double density) {
    return new StripReading(place, OpticalDensity.of(density));
  }
}
