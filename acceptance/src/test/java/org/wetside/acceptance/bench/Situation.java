package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.function.Consumer;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;

/**
 * A situation in which somebody meets the Bench: what went before, and the keys that lead to it.
 */
@SuppressWarnings("ImmutableEnumChecker") // the lambdas below hold nothing that changes
enum Situation {
  VOLUME_TEST("", run -> {}, page -> {}),
  IS_IT_LOADED("Is the film in the tank?", run -> {}, page -> {}),
  CHECK("Close the tank", run -> {}, page -> page.locator("#keys .next").click()),
  WITH_CARE(
      "With care",
      run -> {},
      page -> {
        for (int key = 0; key < 7; key++) {
          press(page, "Space");
        }
      }),
  CAUTIONS(
      "With care",
      Situation::start,
      page -> {
        press(page, "w");
        press(page, "h");
      }),
  READY("Developer in", run -> {}, page -> press(page, "Escape")),
  RUNNING("", Situation::start, page -> {}),
  READING("Reading", Situation::start, page -> press(page, "r")),
  MISHAP("What happened?", Situation::start, page -> press(page, "m")),
  ADVICE(
      "Do this now",
      Situation::start,
      page -> {
        press(page, "m");
        press(page, "1");
      }),
  WHERE_AM_I("Where am I?", Situation::start, page -> press(page, "w")),
  WAITING("", Situation::waitInTheStopBath, page -> {}),
  OUT_OF_REACH(
      "",
      Situation::start,
      page -> {
        page.context().setOffline(true);
        assertThat(page.locator("#notice")).isVisible();
      }),
  FINISHED("", Situation::hang, page -> {});

  private final String act;
  private final Consumer<ReadyRun> before;
  private final Consumer<Page> keys;

  Situation(String act, Consumer<ReadyRun> before, Consumer<Page> keys) {
    this.act = act;
    this.before = before;
    this.keys = keys;
  }

  /** What happened before the page was opened. */
  void prepare(ReadyRun ready) {
    before.accept(ready);
  }

  /** Opens the Bench and goes there. */
  void show(ReadyRun ready, Page page) {
    if (this != VOLUME_TEST) {
      page.addInitScript("localStorage.setItem('wetside.heard', new Date().toISOString())");
    }
    page.navigate(ready.address());
    assertThat(page.locator("#act-words")).not().isEmpty();
    keys.accept(page);
    assertThat(page.locator("#act-words")).containsText(act);
  }

  private static void press(Page page, String key) {
    page.keyboard().press(key);
    page.waitForTimeout(760); // a second press within 0.7 s is one press
  }

  private static void start(ReadyRun ready) {
    ready.send(0, new Happening.Started(List.of(), true));
  }

  private static void waitInTheStopBath(ReadyRun ready) {
    start(ready);
    ready.send(1, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, true));
    ready.send(1, new Happening.WaitingBegun(Origin.PRESSED));
  }

  private static void hang(ReadyRun ready) {
    start(ready);
    int steps = ready.wetside.bench().look(ready.run).state().plan().steps().size();
    for (int step = 1; step < steps; step++) {
      ready.send(step, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, true));
    }
    ready.send(steps - 1, new Happening.Finished(Origin.PRESSED));
  }
}
