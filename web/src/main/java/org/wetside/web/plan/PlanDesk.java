package org.wetside.web.plan;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.plan.Tonight;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Units;
import org.wetside.core.run.Phase;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;

/** Puts the start page together from the places it speaks of. */
final class PlanDesk {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);
  private static final int RUNS_LOOKED_AT = 12;

  /** Between two loads: rinse, wipe, load the next reels (a habit of this program, editable). */
  private static final Duration BETWEEN = Duration.ofMinutes(10);

  private final Wetside wetside;
  private final Instant now;
  private final ZoneId zone;
  private final Tonight tonight;
  private final Units units;

  PlanDesk(Wetside wetside, Units units) {
    this.wetside = wetside;
    this.units = units;
    now = wetside.clock().instant();
    zone = wetside.clock().getZone();
    tonight = wetside.keepTonight().now();
  }

  PlanPage page(Pages pages, Context ctx, FilledForm asked, FilledForm line) {
    List<EveningLoad> strip = new ArrayList<>();
    List<LoadLine> loads = new ArrayList<>();
    LoadLines lines = new LoadLines(wetside, zone, units);
    Instant free = now;
    for (BenchSnapshot run : tonightsRuns()) {
      String number = Integer.toString(loads.size() + 1);
      loads.add(lines.of(number, run));
      if (run.state().phase() != Phase.READY) {
        strip.add(EveningLoad.of(number, run));
      }
      free = later(free, run.state().phase().over() ? now : run.endsAt().plus(BETWEEN));
    }
    for (Load load : planned()) {
      String number = Integer.toString(loads.size() + 1);
      Instant start = load.startsAt().filter(free::isBefore).orElse(roundedUp(free));
      EveningLoad drawn =
          EveningLoad.of(
              number,
              load.tank(),
              wetside.findProcess().of(load.process()),
              load.time().time(),
              start);
      loads.add(lines.of(number, load, start, drawn.end()));
      strip.add(drawn);
      free = drawn.end().plus(BETWEEN);
    }
    List<Roll> waiting = wetside.findRolls().in(RollState.WAITING);
    Optional<Instant> limit = tonight.limit().map(this::tonightAt);
    EveningDrawing.Evening evening = new EveningDrawing.Evening(strip, now, zone, limit);
    PlanPage.Say say = new PlanSentence(loads, waiting, strip, limit, now, zone).say();
    return new PlanPage(
        pages.sheet(ctx, Place.PLAN, (say.before() + say.bold()).strip()),
        say,
        words(),
        asked,
        line,
        strip.isEmpty() ? null : EveningDrawing.wide(evening),
        strip.isEmpty() ? null : EveningDrawing.narrow(evening),
        loads,
        new PlanAttention(wetside, tonight, units).of(loads, waiting),
        waiting.stream().map(this::waiting).toList(),
        missing(waiting, loads));
  }

  /** Runs under way, and those that ended today. */
  private List<BenchSnapshot> tonightsRuns() {
    LocalDate today = LocalDate.ofInstant(now.minus(Duration.ofHours(4)), zone);
    List<BenchSnapshot> runs = new ArrayList<>();
    for (BenchSnapshot run : wetside.bench().newest(RUNS_LOOKED_AT)) {
      boolean ended = run.state().phase().over();
      boolean ofToday =
          run.state()
              .endedAt()
              .map(at -> !LocalDate.ofInstant(at.minus(Duration.ofHours(4)), zone).isBefore(today))
              .orElse(false);
      if (!ended || ofToday) {
        runs.add(0, run);
      }
    }
    return runs;
  }

  private List<Load> planned() {
    return wetside.startRun().waiting();
  }

  private PlanPage.TonightWords words() {
    String tap = tonight.tap().map(units::words).orElse("");
    String kettle = tonight.kettle().map(units::words).orElse("");
    return new PlanPage.TonightWords(
        DAY.format(now.atZone(zone)),
        tonight.kitchen().map(units::words).orElse(""),
        tap.isEmpty() || kettle.isEmpty() ? tap + kettle : tap + ", " + kettle,
        tonight.limit().map(LocalTime::toString).orElse(""));
  }

  private PlanPage.Waiting waiting(Roll roll) {
    Days days = Days.of(wetside.clock());
    LocalDate since =
        roll.described().exposedOn().orElse(LocalDate.ofInstant(roll.addedAt(), zone));
    return new PlanPage.Waiting(
        roll.number(), roll.filmAndIndex(), roll.described().title(), days.age(since));
  }

  private List<PlanPage.Missing> missing(List<Roll> waiting, List<LoadLine> loads) {
    List<PlanPage.Missing> missing = new ArrayList<>();
    if (wetside.listBottles().all().isEmpty()) {
      missing.add(
          new PlanPage.Missing(
              "Then the bottles.", "What stands on the shelf, and since when.", "/shelf"));
    }
    if (wetside.keepTanks().all().isEmpty()) {
      missing.add(
          new PlanPage.Missing("Then the tanks.", "Reels, and how much they hold.", "/equipment"));
    }
    if (loads.isEmpty()) {
      missing.add(
          new PlanPage.Missing(
              "Then a load.",
              waiting.isEmpty()
                  ? "Rolls that share a tank; it appears here, drawn on a strip."
                  : "Tick the rolls that shall share a tank; it appears here, drawn on a strip.",
              "/loads/new"));
    }
    return missing;
  }

  private Instant tonightAt(LocalTime clock) {
    ZonedDateTime at = now.atZone(zone).with(clock);
    boolean afterMidnight = clock.isBefore(LocalTime.of(6, 0)) && at.toInstant().isBefore(now);
    return (afterMidnight ? at.plusDays(1) : at).toInstant();
  }

  private static Instant roundedUp(Instant at) {
    Instant minute = at.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(at) ? minute : minute.plusSeconds(60);
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
