package org.wetside.web.paper;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.checks.Check;
import org.wetside.app.checks.CheckGroup;
import org.wetside.app.checks.CheckState;
import org.wetside.core.plan.Load;
import org.wetside.core.process.Act;
import org.wetside.core.process.AgitationText;
import org.wetside.core.process.Light;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RollInTank;
import org.wetside.web.page.Hatch;

/** Puts together what stands on the run sheet of a run, or of a load that may become one. */
public final class ReadSheet {
  private final Wetside wetside;
  private final String server;

  /**
   * @param wetside whose runs and loads they are
   * @param server where the program is found, for the code on the sheet; no slash at its end
   */
  public ReadSheet(Wetside wetside, String server) {
    this.wetside = wetside;
    this.server = server;
  }

  /** Of a run. */
  SheetView ofRun(long run, SheetWish wish) {
    return of(wetside.bench().look(run), Optional.empty(), wish);
  }

  /**
   * Of a load: of its run when it has one.
   *
   * @throws BadValueException when there is no such load
   */
  public SheetView ofLoad(long id, SheetWish wish) {
    Load load =
        wetside
            .listLoads()
            .find(id)
            .orElseThrow(
                () -> new BadValueException("load", Long.toString(id), "there is no such load"));
    Optional<Long> run = wetside.listLoads().runOf(id);
    return run.isPresent()
        ? of(wetside.bench().look(run.get()), load.startsAt(), wish)
        : of(wetside.foreseeRun().of(load), load.startsAt(), wish);
  }

  private SheetView of(BenchSnapshot run, Optional<Instant> planned, SheetWish wish) {
    Clock clock = wetside.clock();
    Duration later =
        run.provisional()
            ? Duration.between(run.moments().start(), wish.start(planned, clock))
            : Duration.ZERO;
    Long number = run.card().id() == 0 ? null : (Long) run.card().id();
    Long load = run.card().load().orElse(null);
    return new SheetView(
        number,
        load,
        server + (number == null ? "/loads/" + load : "/bench/" + number),
        run.card().name(),
        run.card().tank(),
        rolls(run.card().rolls()),
        run.card().processName(),
        run.card().developer(),
        run.card().dilution().label(),
        run.card().temperature().map(one -> one.celsius()).orElse(null),
        development(run),
        run.card().timeStanding().word(),
        run.card().timeSource(),
        run.moments().start().plus(later).toString(),
        !run.provisional(),
        run.endsAt().plus(later).toString(),
        baths(run),
        checks(run),
        steps(run, later),
        Care.of(
            run.state().plan(),
            wetside.careForSteps().of(run.state().plan().steps(), run.card().developer())),
        clock.getZone().getId(),
        clock.instant().toString(),
        wetside.home().isDemo());
  }

  private static List<SheetView.SheetRoll> rolls(List<RollInTank> fromBelow) {
    List<RollInTank> rolls = new ArrayList<>(fromBelow);
    Collections.reverse(rolls);
    return rolls.stream()
        .map(one -> new SheetView.SheetRoll(one.number(), one.film(), one.place()))
        .toList();
  }

  private static double development(BenchSnapshot run) {
    return run.state().plan().steps().stream()
        .filter(step -> step.kind().developing() || step.kind() == StepKind.MONOBATH)
        .findFirst()
        .flatMap(Step::duration)
        .map(TimeSpan::toSeconds)
        .orElse(0.0);
  }

  /**
   * Each bath once, however often it is poured; water from the tap only where the film meets it
   * first.
   */
  private static List<SheetView.SheetBath> baths(BenchSnapshot run) {
    Map<String, SheetView.SheetBath> baths = new LinkedHashMap<>();
    for (int i = 0; i < run.state().plan().steps().size(); i++) {
      Step step = run.state().plan().step(i);
      if (step.kind().wet() && step.kind() != StepKind.RINSE && step.kind() != StepKind.WASH) {
        baths.putIfAbsent(
            step.kind().word() + step.bottle().orElse(""),
            new SheetView.SheetBath(
                Hatch.of(step.kind()),
                step.kind().heading(),
                step.bottle().orElse(null),
                run.card().volume().map(Volume::millilitres).orElse(null),
                concentrate(run, i),
                low(step),
                high(step),
                step.afterUse().words()));
      }
    }
    return List.copyOf(baths.values());
  }

  /** What is measured out of a bottle: as the shelf says, else by the dilution of the developer. */
  private static @Nullable Double concentrate(BenchSnapshot run, int index) {
    Optional<Volume> all = run.card().volume();
    Step step = run.state().plan().step(index);
    Optional<Volume> taken = run.taken().get(index);
    if (taken.isEmpty() && step.kind().developing()) {
      taken =
          all.flatMap(fill -> run.card().dilution().ratio().map(one -> one.concentrateIn(fill)));
    }
    return all.isPresent() && taken.isPresent() && taken.get().compareTo(all.get()) < 0
        ? (Double) taken.get().millilitres()
        : null;
  }

  /**
   * What no data has answered. A temperature that was not read has its place beside the bath,
   * cautions have theirs; what is the same of several baths is said once.
   */
  private static List<SheetView.SheetCheck> checks(BenchSnapshot run) {
    List<SheetView.SheetCheck> checks = new ArrayList<>();
    Map<String, List<String>> same = new LinkedHashMap<>();
    for (Check check : run.before().checks()) {
      boolean unread = check.group() == CheckGroup.TEMPERATURES && check.state() == CheckState.OPEN;
      boolean caution = check.group() == CheckGroup.HANDLING && check.state() == CheckState.OPEN;
      if (check.group() == CheckGroup.CLOSING) {
        checks.add(new SheetView.SheetCheck(true, check.text()));
      } else if (!check.done() && !unread && !caution) {
        int of = check.text().indexOf(": ");
        same.computeIfAbsent(check.text().substring(of + 1), unused -> new ArrayList<>())
            .add(check.text().substring(0, Math.max(0, of)));
      }
    }
    same.forEach((how, baths) -> checks.add(new SheetView.SheetCheck(false, of(baths) + how)));
    return checks;
  }

  private static String of(List<String> baths) {
    String all = String.join("; ", baths);
    return all.isEmpty() ? "" : all + ":";
  }

  private static List<SheetView.SheetStep> steps(BenchSnapshot run, Duration later) {
    List<SheetView.SheetStep> steps = new ArrayList<>();
    for (int i = 0; i < run.moments().steps().size(); i++) {
      Step step = run.state().plan().step(i);
      Placement.Moments at = run.moments().steps().get(i);
      boolean tray = step.agitation().manner() == Manner.FILM_LIFT;
      steps.add(
          new SheetView.SheetStep(
              Hatch.of(step.kind()),
              step.kind().heading(),
              step.bottle().orElse(null),
              step.kind().wet(),
              step.kind().developing(),
              step.light() == Light.DARK && !tray,
              TimeSpan.toSeconds(Duration.between(at.begin(), at.full())),
              TimeSpan.toSeconds(Duration.between(at.full(), at.end())),
              at.begin().plus(later).toString(),
              at.full().plus(later).toString(),
              at.drain().plus(later).toString(),
              at.end().plus(later).toString(),
              AgitationText.of(step.agitation()),
              bouts(run, i, at, later).toList(),
              low(step),
              high(step),
              step.afterUse().words()));
    }
    return steps;
  }

  private static Stream<String> bouts(
      BenchSnapshot run, int step, Placement.Moments moments, Duration later) {
    return run.cues().stream()
        .filter(cue -> cue.step() == step && cue.act() == Act.AGITATE)
        .map(run::at)
        .filter(at -> at.isAfter(moments.full()))
        .map(at -> at.plus(later).toString());
  }

  private static @Nullable Double low(Step step) {
    return step.band().map(band -> band.low().celsius()).orElse(null);
  }

  private static @Nullable Double high(Step step) {
    return step.band().map(band -> band.high().celsius()).orElse(null);
  }
}
