package org.wetside.web.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.times.TimeWords;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.development.Band;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.Units;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RollInTank;

/** Loads and runs as lines of the evening. */
final class LoadLines {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wetside wetside;
  private final ZoneId zone;
  private final Units units;

  LoadLines(Wetside wetside, ZoneId zone, Units units) {
    this.wetside = wetside;
    this.zone = zone;
    this.units = units;
  }

  /** A load that is at the Bench, or hangs. */
  LoadLine of(String number, BenchSnapshot run) {
    boolean ready = run.state().phase() == Phase.READY;
    Optional<Load> load = run.card().load().flatMap(id -> wetside.listLoads().find(id));
    String films =
        run.card().rolls().stream()
            .map(RollInTank::film)
            .distinct()
            .collect(Collectors.joining("; "));
    return new LoadLine(
        number,
        run.card().load().orElse(0L),
        run.card().id(),
        run.state().phase().over(),
        run.card().rolls().stream().map(RollInTank::number).collect(Collectors.joining(", ")),
        run.card().tank(),
        films + " in " + recipe(run),
        stands(run),
        load.map(LoadLines::developerBottle).orElse(""),
        TimeWords.clock(
            run.state().plan().steps().stream()
                .filter(step -> step.kind().developing())
                .findFirst()
                .flatMap(step -> step.duration())
                .orElse(java.time.Duration.ZERO)),
        run.card().timeStanding(),
        load.flatMap(known -> known.time().band()).map(LoadLines::band).orElse(""),
        clock(run.endsAt()),
        ready ? "nothing poured yet" : "from " + clock(run.moments().start()),
        List.of());
  }

  /** A load that was only planned. */
  LoadLine of(String number, Load load, Instant start, Instant end) {
    List<Roll> rolls = new ArrayList<>();
    load.numbers().forEach(one -> wetside.findRolls().byNumber(one).ifPresent(rolls::add));
    return new LoadLine(
        number,
        load.id(),
        null,
        false,
        String.join(", ", load.numbers()),
        load.tank(),
        rolls.stream().map(Roll::filmAndIndex).distinct().collect(Collectors.joining("; "))
            + " in "
            + load.recipe().words(units),
        mix(load),
        developerBottle(load),
        TimeWords.clock(load.time().time()),
        load.time().standing(),
        load.time().band().map(LoadLines::band).orElse(""),
        clock(end),
        "from " + clock(start),
        List.of());
  }

  private String recipe(BenchSnapshot run) {
    return run.card().developer()
        + " "
        + run.card().dilution().label()
        + run.card().temperature().map(at -> ", " + units.words(at)).orElse("");
  }

  private String stands(BenchSnapshot run) {
    return switch (run.state().phase()) {
      case READY -> "at the Bench; nothing poured yet";
      case RUNNING, WAITING -> {
        int current = run.state().current();
        yield "in the "
            + run.state().plan().step(current).kind().word()
            + " until "
            + clock(run.moments().steps().get(current).end());
      }
      case FINISHED -> "hangs; hands off until " + clock(run.endsAt().plusSeconds(3 * 3600));
      case ABANDONED -> "given up";
    };
  }

  private String mix(Load load) {
    String total = units.words(load.fill());
    return load.recipe()
        .dilution()
        .ratio()
        .filter(parts -> parts.waterParts() > 0)
        .map(parts -> WorkingSolution.of(parts, load.fill()))
        .map(
            solution ->
                total
                    + ": "
                    + units.number(solution.concentrate())
                    + " of stock, "
                    + units.number(solution.water())
                    + " water")
        .orElse(total + " of " + load.recipe().dilution().label());
  }

  private static String developerBottle(Load load) {
    return load.bottles().getOrDefault(BathKind.DEVELOPER, "");
  }

  private static String band(Band band) {
    return TimeWords.clock(band.low()) + " to " + TimeWords.clock(band.high());
  }

  private String clock(Instant at) {
    return MINUTE.format(at.atZone(zone));
  }
}
