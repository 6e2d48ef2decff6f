package org.wetside.web.bench;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.plan.Load;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Units;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RollInTank;

/** Runs and loads as lines of a page, on the reader's clock. */
final class BenchLines {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final ZoneId zone;
  private final Units units;

  BenchLines(ZoneId zone, Units units) {
    this.zone = zone;
    this.units = units;
  }

  BenchListPage.RunLine run(BenchSnapshot run) {
    boolean over = run.state().phase().over();
    return new BenchListPage.RunLine(
        run.card().id(),
        run.card().tank(),
        rolls(run),
        state(run),
        at(run.endsAt(), MINUTE),
        over ? (run.state().phase() == Phase.FINISHED ? "hung" : "given up") : "hangs");
  }

  BenchListPage.LoadLine load(Load load) {
    return new BenchListPage.LoadLine(
        load.id(),
        load.tank(),
        String.join(", ", load.numbers()),
        load.recipe().words(units) + ", " + EventWords.clock(load.time().time()));
  }

  String rolls(BenchSnapshot run) {
    return run.card().rolls().stream().map(RollInTank::number).collect(Collectors.joining(", "));
  }

  List<BenchPage.Row> rows(BenchSnapshot run) {
    List<BenchPage.Row> rows = new ArrayList<>();
    for (int i = 0; i < run.moments().steps().size(); i++) {
      Step step = run.state().plan().step(i);
      Placement.Moments moments = run.moments().steps().get(i);
      rows.add(
          new BenchPage.Row(
              step.kind().heading(),
              step.bottle().orElse(""),
              at(moments.begin(), SECOND),
              at(moments.drain(), SECOND),
              at(moments.end(), SECOND),
              agitation(run, i)));
    }
    return rows;
  }

  private String agitation(BenchSnapshot run, int step) {
    List<Cue> bouts =
        run.cues().stream().filter(cue -> cue.step() == step && cue.act() == Act.AGITATE).toList();
    if (bouts.isEmpty()) {
      return run.state().plan().step(step).agitation().manner().word();
    }
    return bouts.stream().map(cue -> at(run.at(cue), SECOND)).collect(Collectors.joining(", "));
  }

  private String at(Instant moment, DateTimeFormatter form) {
    return form.format(moment.atZone(zone));
  }

  private static String state(BenchSnapshot run) {
    return switch (run.state().phase()) {
      case READY -> "nothing poured yet";
      case RUNNING -> run.state().plan().step(run.state().current()).kind().heading();
      case WAITING ->
          "waiting in the " + run.state().plan().step(run.state().current()).kind().word();
      case FINISHED -> "finished";
      case ABANDONED -> "given up";
    };
  }
}
