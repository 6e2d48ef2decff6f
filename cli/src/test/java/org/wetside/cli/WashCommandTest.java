package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WashCommandTest {
  private static Typed wash(String... more) {
    return Typed.of(Stream.concat(Stream.of("wash"), Stream.of(more)).toArray(String[]::new));
  }

  private static JsonNode sixFills(String... more) {
    String[] six = {
      "--method",
      "fills",
      "--volume",
      "500mL",
      "--fills",
      "6",
      "--start",
      "60g/L",
      "--carry-over",
      "10mL",
      "--json"
    };
    Typed typed = wash(Stream.concat(Stream.of(six), Stream.of(more)).toArray(String[]::new));
    assertThat(typed.err()).isEmpty();
    return JsonMapper.shared().readTree(typed.out());
  }

  @Test
  void sixFillsByTheRuleAndByTheTwoLiquids() {
    JsonNode rule = sixFills();
    // 60 g/L · (10/510)ⁿ, n = 1 … 6: the carried-over 10 mL and the 500 mL of CH-S30.
    double[] printed = {1.176, 0.02307, 0.0004523, 8.869e-6, 1.739e-7, 3.410e-9};
    JsonNode equilibrium = rule.get("equilibriumGramsPerLitre");
    assertThat(equilibrium.size()).isEqualTo(printed.length);
    for (int fill = 0; fill < printed.length; fill++) {
      assertThat(equilibrium.get(fill).asDouble()).isCloseTo(printed[fill], withinPercentage(0.05));
    }
    assertThat(rule.get("residueGramsPerSquareMetre").isNull()).isTrue();
    JsonNode both = sixFills("--dwell", "20s").get("residueGramsPerSquareMetre");
    assertThat(both.get("halfTime60Seconds").get(5).asDouble())
        .isGreaterThan(both.get("halfTime15Seconds").get(5).asDouble());
  }

  @Test
  void peopleReadWhatStaysAndThatItIsALowerBound() {
    Typed fills = wash("--method=fills", "--volume=500mL", "--fills=6", "--dwell=20s");
    assertThat(fills.out())
        .contains("at least 0.0094 to 0.58 g/m²", "3.0 L of water", "lower bound");
    assertThat(wash("--all", "--volume=500mL").out())
        .contains("changes-10: 5.0 L of water, 22 min", "running-20: 3.8 L of water, 20 min");
    assertThat(wash("--method=running", "--volume=1L", "--flow=2L/min", "--minutes=10").out())
        .contains("Running water 10:00, 2 L/min through 1000 mL");
    assertThat(wash("--dry", "--volume=603mL", "--agent=1+100", "--hung=21:40").out())
        .contains("6 mL of wetting agent", "do not touch until 01:40");
  }

  @Test
  void whatCannotBeIsRefused() {
    Typed refused = wash("--volume", "500mL", "--carry-over", "2mL");
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("carry-over \"2 mL\"", "more than the 2 mL");
    assertThat(wash().err()).contains("volume of one fill");
    assertThat(wash("--dry", "--volume=500mL", "--hung=25:00").err()).contains("25:00");
  }
}
