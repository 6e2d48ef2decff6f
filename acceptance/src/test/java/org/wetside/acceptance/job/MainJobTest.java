package org.wetside.acceptance.job;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.core.plan.RollState;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * Rolls, load, mix, run, record: the whole job against a real server, database and browser, with
 * the server's time sixty times as fast. The roll is invented.
 */
class MainJobTest {
  private static final int FASTER = 60;

  /** Twenty-five minutes of run, sixty times as fast, and room for a slow machine. */
  private static final double RUN_MILLIS = 90_000;

  /** A second press of one key within 0.7 s is one press. */
  private static final double ONE_KEY_ONCE_MILLIS = 800;

  private final FastTime time = new FastTime(FASTER);
  private Wetside wetside;
  private WebServer server;
  private Browsing browsing;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, time);
    wetside.benchWith(time);
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
  }

  @AfterEach
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  @Test
  void aRollGoesFromTheDrawerToItsRecord() {
    Page page = browsing.page(1280, 800);
    theWholeJob(page, new Person.WithPointer(page));
  }

  @Test
  void theSameByKeyboardOnlyOnAPhone() {
    Page page = browsing.page(390, 844);
    theWholeJob(page, new Person.WithKeyboard(page));
  }

  private void theWholeJob(Page page, Person person) {
    go(page, "/equipment");
    person.type("name", "Double");
    person.type("most-135", "2");
    person.type("each-135", "300");
    person.type("holds", "650");
    person.press("Keep this tank");
    assertThat(page.locator(".said")).containsText("Kept Double.");
    go(page, "/");
    person.type("line", "A-1 135 36 TRI-X 400 @400 \"lock gate\"");
    person.press("Keep this roll");
    person.tick("roll", "A-1");
    person.press("Make a load of the ticked");
    person.type("developer", "D-76");
    person.type("dilution", "stock");
    person.press("What does it come to?");
    // Row E017 (source DV-T01): 6.75 min in D-76 stock at 68 °F, small tank.
    assertThat(page.locator("h1")).containsText("Develop 6:45");
    person.press("Make this load");
    assertThat(page.locator("h1")).containsText("Mix");
    person.press("Go to the Bench");
    runAtTheBench(page);
    assertThat(wetside.findRolls().byNumber("A-1").orElseThrow().state())
        .isEqualTo(RollState.PROCESSED);
    go(page, "/negatives/A-1");
    assertThat(page.locator("body")).containsText("D-76");
    assertThat(page.locator("body")).containsText("19.5");
  }

  /** At the Bench keys are keys for everybody. */
  private static void runAtTheBench(Page page) {
    Locator act = page.locator("#act-words");
    assertThat(act).containsText("Do you hear it?");
    assertThat(page.locator("#keys")).containsText("Play it");
    page.keyboard().press("Space");
    assertThat(page.locator("#keys")).containsText("I hear it");
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    page.keyboard().press("Space");
    assertThat(act).containsText("Is the film in the tank?");
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    page.keyboard().press("Space");
    assertThat(act).containsText("Close");
    for (int tick = 1; tick <= 6; tick++) {
      page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
      page.keyboard().press("Space");
    }
    assertThat(act).containsText("With care");
    page.keyboard().press("a");
    assertThat(act).containsText("Developer in");
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    page.keyboard().press("Space");
    assertThat(page.locator("#tank")).containsText("Double");
    page.waitForTimeout(1_000);
    page.keyboard().press("r");
    assertThat(act).containsText("Reading");
    for (int press = 0; press < 5; press++) {
      page.keyboard().press("ArrowDown");
    }
    page.keyboard().press("Space");
    assertThat(act)
        .containsText("Hang", new LocatorAssertions.ContainsTextOptions().setTimeout(RUN_MILLIS));
  }

  private void go(Page page, String path) {
    page.navigate(server.address().resolve(path).toString());
  }
}
