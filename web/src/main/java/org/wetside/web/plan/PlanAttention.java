package org.wetside.web.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.Temper;
import org.wetside.app.plan.Tonight;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TemperingQuestion;

/** What wants attention before the next pour. */
final class PlanAttention {
  /** Baths further apart than this risk reticulation (common practice). */
  private static final double JUMP_KELVINS = 3;

  /** A roll that has waited so long is said. */
  private static final int LONG_DAYS = 28;

  private final Wetside wetside;
  private final Tonight tonight;
  private final Units units;

  PlanAttention(Wetside wetside, Tonight tonight, Units units) {
    this.wetside = wetside;
    this.tonight = tonight;
    this.units = units;
  }

  List<PlanPage.Attention> of(List<LoadLine> lines, List<Roll> waiting) {
    List<PlanPage.Attention> attention = new ArrayList<>();
    wetside
        .dailyBackup()
        .failed()
        .ifPresent(
            failed ->
                attention.add(
                    new PlanPage.Attention(
                        "No backup",
                        true,
                        "Today's backup could not be made: " + failed.reason(),
                        "/equipment/backups",
                        "To the backups")));
    attention.addAll(new TestAttention(wetside).all());
    for (LoadLine line : lines) {
      if (!line.done() && line.id() > 0) {
        wetside.listLoads().find(line.id()).ifPresent(load -> addOf(attention, line, load));
      }
    }
    String precious =
        waiting.stream()
            .filter(roll -> roll.described().precious())
            .map(Roll::number)
            .collect(Collectors.joining(", "));
    if (!precious.isEmpty()) {
      attention.add(
          new PlanPage.Attention(
              "Precious",
              false,
              precious + " must not fail: develop something else in the same bath first.",
              "",
              ""));
    }
    waiting.stream().findFirst().ifPresent(roll -> addWaiting(attention, roll));
    return attention;
  }

  private void addOf(List<PlanPage.Attention> attention, LoadLine line, Load load) {
    jump(load.recipe().temperature(), load.fill())
        .ifPresent(
            text ->
                attention.add(
                    new PlanPage.Attention(
                        "Cold wash", true, "Load " + line.number() + ". " + text, "", "")));
    if (line.run() == null) {
      wetside
          .checkStock()
          .of(load)
          .filter(check -> !check.passed())
          .map(check -> StockPart.of(check, units))
          .ifPresent(
              stock ->
                  attention.add(
                      new PlanPage.Attention(
                          stock.flag(),
                          stock.wrong(),
                          "Load " + line.number() + ". " + stock.text(),
                          "/loads/" + load.id(),
                          "To load " + line.number())));
    }
  }

  /**
   * What to do when the wash water of the tap is too far from the baths; empty when it is near, or
   * nobody said how cold the tap is.
   */
  Optional<String> jump(Temperature baths, Volume fill) {
    Optional<Temperature> tap = tonight.tap();
    if (tap.isEmpty() || tap.get().minus(baths).abs().kelvins() <= JUMP_KELVINS) {
      return Optional.empty();
    }
    double apart = Math.abs(tap.get().minus(baths).kelvins());
    String said =
        "The tap is "
            + units.words(tap.get())
            + ", "
            + String.format(Locale.ROOT, "%.0f K", apart)
            + " from the baths; more than 3 K apart risks reticulation (common practice). ";
    Tempering tempering =
        new Temper().answer(TemperingQuestion.ofWater(baths, fill, tonight.waters())).tempering();
    if (tempering instanceof Tempering.Reached reached) {
      return Optional.of(
          said + "Wash in fills of " + units.words(fill) + ": " + pours(reached.pour()) + " each.");
    }
    return Optional.of(
        said
            + "Let the wash water stand in the room, or say how hot the kettle is and it is worked"
            + " out here.");
  }

  private String pours(List<Liquid> pour) {
    return pour.stream()
        .filter(part -> part.volume().millilitres() > 0)
        .map(part -> units.words(part.volume()) + " " + part.name())
        .collect(Collectors.joining(" and "));
  }

  private void addWaiting(List<PlanPage.Attention> attention, Roll roll) {
    LocalDate today = LocalDate.ofInstant(wetside.clock().instant(), wetside.clock().getZone());
    LocalDate since =
        roll.described()
            .exposedOn()
            .orElse(LocalDate.ofInstant(roll.addedAt(), wetside.clock().getZone()));
    long days = ChronoUnit.DAYS.between(since, today);
    if (days >= LONG_DAYS) {
      attention.add(
          new PlanPage.Attention(
              "Waits long",
              false,
              roll.number() + ", " + roll.filmAndIndex() + ", has waited " + days + " days.",
              "/loads/new?rolls=" + roll.number(),
              "Make a load of it"));
    }
  }
}
