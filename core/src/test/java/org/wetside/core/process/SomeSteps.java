package org.wetside.core.process;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.wetside.core.source.Standing;

/** Steps for tests: an ordinary process, and random ones that are always legal. */
public final class SomeSteps {
  private static final List<Manner> MANNERS = List.of(Manner.values());
  private static final List<StepKind> KINDS = List.of(StepKind.values());

  private SomeSteps() {}

  /** Developer 9:00 with the handbook's agitation, stop bath, fixer, wash, final rinse. */
  public static List<Step> ordinary() {
    return List.of(
        step(StepKind.DEVELOPER, "D", 540, handbook()),
        step(StepKind.STOP_BATH, "S", 30, AgitationSchedule.continuous()),
        step(StepKind.FIXER, "F", 300, handbook()),
        step(StepKind.WASH, "", 600, AgitationSchedule.none()),
        step(StepKind.FINAL_RINSE, "P", 60, AgitationSchedule.none()));
  }

  /** 30 s, then 5 s each minute (DV-S12). */
  public static AgitationSchedule handbook() {
    return AgitationSchedule.intervals(
        Manner.INVERSION,
        Cycle.ofLength(Duration.ofSeconds(30)),
        Duration.ofMinutes(1),
        Cycle.ofLength(Duration.ofSeconds(5)),
        true);
  }

  /** A step with the usual pour and drain. */
  public static Step step(StepKind kind, String bottle, int seconds, AgitationSchedule agitation) {
    Duration time = Duration.ofSeconds(seconds);
    boolean wet = kind.wet();
    return new Step(
        kind,
        bottle.isEmpty() ? Optional.empty() : Optional.of(bottle),
        Optional.of(time),
        wet ? Step.POUR_IN : Duration.ZERO,
        wet ? Step.DRAIN_LEAD : Duration.ZERO,
        agitation,
        Optional.empty(),
        bottle.equals("F") ? AfterUse.backTo("F") : AfterUse.discard(),
        kind == StepKind.WASH || kind == StepKind.FINAL_RINSE ? Light.ANY : Light.DARK,
        LongestTime.of(kind, time),
        Standing.COMMON_PRACTICE,
        "");
  }

  /** One to seven random legal steps. */
  public static List<Step> random(SplittableRandom random) {
    return java.util.stream.IntStream.range(0, random.nextInt(1, 8))
        .mapToObj(
            i ->
                step(
                    KINDS.get(random.nextInt(KINDS.size())),
                    random.nextBoolean() ? "F" : "",
                    random.nextInt(15, 1200),
                    schedule(random)))
        .toList();
  }

  private static AgitationSchedule schedule(SplittableRandom random) {
    Cycle initial =
        random.nextBoolean()
            ? Cycle.ofLength(Duration.ofSeconds(random.nextInt(1, 60)))
            : Cycle.ofInversions(random.nextInt(1, 20), Cycle.PACE);
    Cycle cycle = Cycle.ofInversions(random.nextInt(1, 8), Cycle.PACE);
    Manner manner = MANNERS.get(random.nextInt(MANNERS.size()));
    return switch (manner) {
      case CONTINUOUS -> AgitationSchedule.continuous();
      case ROTARY -> AgitationSchedule.rotary(random.nextInt(10, 90));
      case NONE -> AgitationSchedule.none();
      default ->
          AgitationSchedule.intervals(
              manner,
              initial,
              Duration.ofSeconds(random.nextInt(15, 180)),
              cycle,
              random.nextBoolean());
    };
  }
}
