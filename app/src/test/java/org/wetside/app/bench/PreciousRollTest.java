package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.checks.Check;
import org.wetside.app.checks.CheckGroup;
import org.wetside.app.checks.CheckState;
import org.wetside.app.shelf.ChangeBottle;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.PassedOver;
import org.wetside.core.shelf.BathTest;
import org.wetside.store.Runs;

/** A precious roll goes into tested baths, or with a reason. */
class PreciousRollTest {
  @TempDir Path folder;

  private Winter winter() {
    return new Winter(folder.resolve("wetside.db"));
  }

  private static List<Check> precious(Winter winter, long run) {
    return winter.bench.look(run).before().checks().stream()
        .filter(check -> check.group() == CheckGroup.PRECIOUS)
        .toList();
  }

  private static List<String> closing(Winter winter, long run) {
    return winter.bench.look(run).before().checks().stream()
        .filter(check -> check.group() == CheckGroup.CLOSING)
        .map(Check::id)
        .toList();
  }

  private static Happening.Started stored(Winter winter, long run) {
    return (Happening.Started)
        winter.database.<Happening>read(session -> new Runs(session).events(run).get(0).what());
  }

  @Test
  void anOrdinaryRollIsNotAskedFor() {
    try (Winter winter = winter()) {
      assertThat(precious(winter, winter.opened("Double", ""))).isEmpty();
    }
  }

  @Test
  void bothTestsPassedLetItInAndAreForgottenAfterTwoDays() {
    try (Winter winter = winter()) {
      ChangeBottle shelf = new ChangeBottle(winter.database, winter.clock);
      long run = winter.opened("Double", "precious");
      assertThat(precious(winter, run)).extracting(Check::state).containsOnly(CheckState.OPEN);
      shelf.tested("D", BathTest.LEADER, true, "");
      shelf.tested("F", BathTest.CLIP, true, "cleared in 40 s");
      assertThat(precious(winter, run)).extracting(Check::state).containsOnly(CheckState.DONE);
      winter.clock.pass(Duration.ofHours(48).plusSeconds(1));
      assertThat(precious(winter, run))
          .extracting(Check::text)
          .first()
          .asString()
          .endsWith("leader test of bottle D passed on 4 January, too long ago");
    }
  }

  @Test
  void whatIsAddedToABottleWantsATestOfItsOwn() {
    try (Winter winter = winter()) {
      ChangeBottle shelf = new ChangeBottle(winter.database, winter.clock);
      long run = winter.opened("Double", "precious");
      shelf.tested("F", BathTest.CLIP, true, "");
      shelf.topUp("F", Volume.ofLitres(1), Volume.ofLitres(1), "fresh");
      assertThat(precious(winter, run).get(1).state()).isEqualTo(CheckState.OPEN);
      shelf.tested("F", BathTest.CLIP, false, "");
      shelf.topUp("F", Volume.ofLitres(1), Volume.ofLitres(1), "fresh");
      assertThat(precious(winter, run).get(1).state()).isEqualTo(CheckState.WARNING);
    }
  }

  @Test
  void withoutATestItIsAskedAboutAndAReasonAnswers() {
    try (Winter winter = winter()) {
      long run = winter.opened("Double", "precious");
      List<String> ticks = closing(winter, run);
      Answer asked = winter.send(run, new Happening.Started(ticks, false));
      assertThat(asked.outcome())
          .isEqualTo(
              new Outcome.Asks(
                  "Not ticked: W-1 is precious: leader test of bottle D not noted; W-1 is precious:"
                      + " clip test of bottle F not noted. Pour all the same?"));
      Answer taken =
          winter.send(run, new Happening.Started(ticks, List.of(), "It cannot wait", false));
      assertThat(taken.outcome()).isEqualTo(new Outcome.Applied());
      assertThat(stored(winter, run).reason()).isEqualTo("It cannot wait");
      assertThat(stored(winter, run).passedOver())
          .extracting(PassedOver::id)
          .contains("precious-leader-D", "precious-clip-F");
    }
  }

  @Test
  void whatIsPassedOverStandsInTheRecordInWords() {
    try (Winter winter = winter()) {
      long run = winter.opened("Double", "");
      List<String> ticks = new ArrayList<>(closing(winter, run));
      ticks.remove("tug");
      winter.send(run, new Happening.Started(ticks, List.of(new PassedOver("tug", "")), "", false));
      assertThat(stored(winter, run).passedOver())
          .extracting(PassedOver::text)
          .contains("One tug at the lid: it holds", "Developer, bottle D: not read");
      assertThat(stored(winter, run).ticked()).isEqualTo(ticks);
    }
  }
}
