package org.wetside.app.demo;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.testroll.TestRollDraft;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.TestStep;

/** Invented: a test roll whose first piece is developed, and two wait in their boxes. */
final class DemoTestRoll {
  private final Wetside wetside;
  private final LocalDate today;

  DemoTestRoll(Wetside wetside, LocalDate today) {
    this.wetside = wetside;
    this.today = today;
  }

  void put() {
    KeepTestRolls rolls = wetside.sensitometry().keepTestRolls();
    long roll =
        rolls
            .begin(
                new TestRollReader(Units.METRIC)
                    .requireComplete(
                        new TestRollDraft(
                            "Sluice Pan 400",
                            "400",
                            "D-76",
                            "1+1",
                            "20C",
                            "small",
                            "1/60@f8",
                            "10:00",
                            "",
                            "",
                            "",
                            "",
                            "")))
            .id();
    rolls.tick(roll, TestStep.LEADER, "L 104 mm, 101 mm the second time");
    for (TestStep step :
        List.of(TestStep.GAUGE, TestStep.CARD, TestStep.METER, TestStep.REWIND, TestStep.CUT)) {
      rolls.tick(roll, step, "");
    }
    rolls.tick(roll, TestStep.EXPOSE, "1/60 at f/8 after each piece");
    rolls.develop(
        roll,
        1,
        new PieceDeveloped(
            Duration.ofSeconds(430), Optional.of(Temperature.ofCelsius(20.2)), today.minusDays(2)),
        "");
  }
}
