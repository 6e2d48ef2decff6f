package org.wetside.app.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Units;
import org.wetside.reference.BuiltInProcesses;

/** Baths against their bands and against each other; the process is the built-in small tank. */
class TemperatureChecksTest {
  private static final int DEVELOPER = 0;
  private static final int STOP = 1;

  private static List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Step step :
        BuiltInProcesses.all().stream()
            .filter(p -> p.slug().equals("small-tank"))
            .findFirst()
            .orElseThrow()
            .withDevelopment(Duration.ofMinutes(9))
            .steps()) {
      steps.add(
          step.kind().developing()
              ? step.withBand(
                  TemperatureRange.around(
                      Temperature.ofCelsius(20), TemperatureDifference.ofKelvins(0.5)))
              : step);
    }
    return steps;
  }

  private static List<Check> checks(Pour.Read... readings) {
    return new TemperatureChecks(
            new Pour(
                1,
                Optional.empty(),
                "Double",
                "soup",
                "1+1",
                List.of(),
                steps(),
                List.of(),
                List.of(readings),
                Instant.EPOCH,
                Units.METRIC))
        .all();
  }

  private static Pour.Read read(int step, double raw, double corrected) {
    return new Pour.Read(
        step, Temperature.ofCelsius(raw), Temperature.ofCelsius(corrected), "glass rod");
  }

  private static Check at(List<Check> checks, String id) {
    return checks.stream().filter(check -> check.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void aBathNobodyReadIsSaidAndWaterOfOneKindIsOneBath() {
    List<Check> checks = checks();
    assertThat(checks).extracting(Check::state).containsOnly(CheckState.OPEN);
    assertThat(checks.get(0).text()).isEqualTo("Developer, bottle D: not read");
    assertThat(checks).extracting(Check::text).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource({
    "19.4, WARNING",
    "19.5, DONE",
    "20, DONE",
    "20.5, DONE",
    "20.6, WARNING",
  })
  void theDeveloperIsHeldToTheTemperatureItsTimeWasFoundFor(double corrected, CheckState state) {
    Check check = at(checks(read(DEVELOPER, corrected + 0.3, corrected)), "temperatures-0");
    assertThat(check.state()).isEqualTo(state);
    if (state == CheckState.WARNING) {
      assertThat(check.advice())
          .startsWith("It is to have 19.5 to 20.5 °C.")
          .contains("change the load to");
    }
  }

  @Test
  void whatWasReadStandsBesideWhatItIs() {
    assertThat(at(checks(read(DEVELOPER, 20.3, 20)), "temperatures-0").text())
        .isEqualTo("Developer, bottle D: 20 °C, read 20.3 °C on glass rod");
  }

  @Test
  void theLastReadingCounts() {
    List<Check> checks = checks(read(DEVELOPER, 15, 15), read(DEVELOPER, 20, 20));
    assertThat(at(checks, "temperatures-0").state()).isEqualTo(CheckState.DONE);
  }

  @ParameterizedTest
  @CsvSource({"17, DONE", "16.9, WARNING", "23, DONE", "23.1, WARNING"})
  void bathsMoreThanThreeKelvinsApartAreWarnedOf(double stop, CheckState state) {
    Check apart = at(checks(read(DEVELOPER, 20, 20), read(STOP, stop, stop)), "temperatures-apart");
    assertThat(apart.state()).isEqualTo(state);
    if (state == CheckState.WARNING) {
      assertThat(apart.text()).contains("3.1 K apart");
      assertThat(apart.advice())
          .contains("reticulation")
          .contains(stop < 20 ? "Warm the stop bath" : "Cool the stop bath");
    }
  }
}
