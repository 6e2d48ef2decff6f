package org.wetside.app.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SentEvent;
import org.wetside.app.home.Home;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.Vessel;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;

/**
 * Lives through the invented evenings in a throw-away home by the same use cases that a person
 * uses, and stops in the middle of a run.
 */
public final class FillDemo {
  private static final Map<BathKind, String> BOTTLES =
      Map.of(
          BathKind.DEVELOPER, "D",
          BathKind.STOP_BATH, "S",
          BathKind.FIXER, "F",
          BathKind.WASH_AID, "W",
          BathKind.FINAL_RINSE, "P");

  /** So long the run on the Bench has been going on when the browser opens. */
  private static final Duration HALF_WAY = Duration.ofMinutes(4);

  private final DemoClock clock;
  private final Wetside wetside;
  private final Instant now;
  private final LocalDate today;
  private int sent;

  private FillDemo(Home home, Clock real) {
    now = real.instant();
    today = LocalDate.ofInstant(now, real.getZone());
    clock = new DemoClock(real, evening(real, 12));
    wetside = Wetside.open(home.folder(), clock);
    wetside.benchWith(clock);
  }

  /**
   * Fills an empty home.
   *
   * @param home marked as demo by this
   * @param real the real clock, from the end of the invented days on
   * @return the open home
   */
  public static Wetside into(Home home, Clock real) {
    home.markAsDemo();
    FillDemo demo = new FillDemo(home, real);
    demo.fill(real);
    demo.clock.becomeReal();
    return demo.wetside;
  }

  private void fill(Clock real) {
    new DemoThings(wetside, today).put();
    new DemoStrips(wetside, today).put();
    new DemoTestRoll(wetside, today).put();
    rolls(
        "TM-01 135 36 TRI-X 400 @400 \"sluice keeper\" on " + today.minusDays(16),
        "TM-02 135 36 TRI-X 400 @400 \"wheel pit\" on " + today.minusDays(16),
        "TM-03 135 36 T-MAX 100 @100 \"mill pond at low water\" on " + today.minusDays(15));
    clock.liveTo(evening(real, 9));
    long first = begin(load("Double", "1+1", "TM-01", "TM-02"));
    clock.live(Duration.ofSeconds(11));
    send(first, 0, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false));
    clock.live(Duration.ofMinutes(2));
    read(first, 19.9);
    clock.live(Duration.ofMinutes(5));
    read(first, 19.6);
    clock.live(Duration.ofHours(1));
    file("TM-01", "sleeve 26-1");
    file("TM-02", "sleeve 26-2");
    judge("TM-01", ShadowWord.GOOD, ContrastWord.RATHER_FLAT);
    judge("TM-02", ShadowWord.WEAK, ContrastWord.RATHER_FLAT);
    clock.liveTo(evening(real, 5));
    long second = begin(load("Single", "stock", "TM-03"));
    clock.live(Duration.ofMinutes(3));
    send(
        second,
        0,
        new Happening.Mishap(
            "not agitated",
            "agitate normally from now on; never make up for what was missed",
            Optional.empty()));
    clock.live(Duration.ofMinutes(1));
    send(second, 0, new Happening.Note("the kettle boiled over; one cycle missed"));
    clock.live(Duration.ofHours(1));
    clock.liveTo(now.minus(HALF_WAY).minusSeconds(240));
    rolls(
        "TM-04 135 36 TRI-X 400 @400 \"ferry slip\" on " + today.minusDays(3),
        "TM-05 135 36 TRI-X 400 @400 \"eel weir\" on " + today.minusDays(3),
        "TM-06 135 36 TRI-X 400 @1600 \"lamp in the mill\" on " + today.minusDays(2),
        "TM-07 135 36 T-MAX 100 @100 \"tide gate, the only day it opens\" precious on "
            + today.minusDays(2),
        "TM-08 135 24 Sluice Pan 125 @125 \"last sack of flour\" on " + today.minusDays(1),
        "TM-09 135 36 TRI-X 400 @6400 \"night ferry\" on " + today.minusDays(41));
    Load tonight = load("Double", "1+1", "TM-04", "TM-05");
    load("Single", "1+1", "TM-06");
    clock.liveTo(now.minus(HALF_WAY));
    long running = begin(tonight);
    clock.live(Duration.ofSeconds(10));
    send(running, 0, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, false));
    clock.live(Duration.ofSeconds(95));
    read(running, 19.8);
    clock.liveTo(now);
  }

  private void rolls(String... lines) {
    if (wetside.addRolls().lines(String.join("\n", lines)).orRefuse().isEmpty()) {
      throw new IllegalStateException("the demo has rolls");
    }
  }

  private Load load(String tank, String dilution, String... rolls) {
    return wetside
        .makeLoad()
        .make(
            new LoadWish(
                List.of(rolls),
                tank,
                "small-tank",
                new Recipe("D-76", Dilution.parse(dilution), Temperature.ofCelsius(20)),
                Optional.<ChosenTime>empty(),
                Optional.empty(),
                BOTTLES,
                Optional.empty(),
                ""));
  }

  private long begin(Load load) {
    long run = wetside.startRun().of(load.id()).card().id();
    send(
        run,
        0,
        new Happening.Started(
            ClosingItem.usual(Vessel.SMALL_TANK).stream().map(ClosingItem::id).toList(), false));
    return run;
  }

  private void read(long run, double celsius) {
    Temperature raw = Temperature.ofCelsius(celsius);
    send(run, 0, new Happening.ReadingTaken("glass rod", raw, raw, false));
  }

  private void send(long run, int step, Happening what) {
    sent++;
    wetside
        .bench()
        .take(
            run,
            new SentEvent(
                "demo-event-" + sent,
                Optional.of(step),
                what,
                clock.instant(),
                "laptop at the sink",
                ""));
  }

  private void file(String roll, String sleeve) {
    wetside.fileRoll().file(roll, sleeve);
  }

  private void judge(String roll, ShadowWord shadows, ContrastWord contrast) {
    boolean unused =
        wetside
            .learning()
            .judgeRoll()
            .judge(
                roll,
                new Seen(
                    EdgePrint.USUAL, Optional.of(shadows), Optional.of(contrast), Optional.empty()),
                Optional.empty())
            .time()
            .says()
            .isPresent();
  }

  private static Instant evening(Clock real, int daysAgo) {
    return LocalDate.ofInstant(real.instant(), real.getZone())
        .minusDays(daysAgo)
        .atTime(LocalTime.of(19, 30))
        .atZone(real.getZone())
        .toInstant();
  }
}
