package org.wetside.web.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.Temper;
import org.wetside.app.plan.Tonight;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.plan.Load;
import org.wetside.core.process.PlacedStep;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.Sheet;
import org.wetside.web.process.OrderWarningView;

/** What stands on the page of a load that is to be mixed. */
final class LoadSheet {
  private final Wetside wetside;
  private final Load load;
  private final Tonight tonight;
  private final Units units;
  private final List<CautionView> cautions = new ArrayList<>();
  private final List<LoadPage.Pour> waters = new ArrayList<>();
  private String waterWords = "";
  private String alternative = "";

  LoadSheet(Wetside wetside, Load load, Units units) {
    this.wetside = wetside;
    this.load = load;
    this.units = units;
    tonight = wetside.keepTonight().now();
  }

  LoadPage page(Sheet sheet) {
    ZoneId zone = wetside.clock().getZone();
    Instant now = wetside.clock().instant();
    List<PlacedStep> steps = wetside.showCues().of(load.id(), Optional.empty()).steps();
    Duration length = steps.get(steps.size() - 1).end();
    LoadLine line =
        new LoadLines(wetside, zone, units)
            .of(Long.toString(load.id()), load, now, now.plus(length));
    Optional<WorkingSolution> solution =
        load.recipe().dilution().ratio().map(parts -> WorkingSolution.of(parts, load.fill()));
    Cautions.open()
        .whenHandling(load.recipe().developer(), BathKind.DEVELOPER)
        .forEach(caution -> cautions.add(CautionView.of(caution)));
    solution.ifPresent(this::water);
    return new LoadPage(
        sheet,
        line,
        load.process(),
        wetside.findProcess().of(load.process()).name(),
        load.time().source(),
        solution.map(mix -> units.words(mix.concentrate())).orElse(""),
        waters,
        waterWords,
        alternative,
        cautions,
        wetside.checkStock().of(load).map(check -> StockPart.of(check, units)).orElse(null),
        new PlanAttention(wetside, tonight, units)
            .jump(load.recipe().temperature(), load.fill())
            .orElse(""),
        wetside.checkOrder().of(load).stream().map(OrderWarningView::of).toList(),
        LoadChecks.of(wetside.checkLoad().of(load, units)));
  }

  /** The water for the developer, from the waters there are; stock is as warm as the kitchen. */
  private void water(WorkingSolution mix) {
    if (mix.water().millilitres() <= 0) {
      waterWords = "No water: it is used undiluted. Bring it to the temperature in a water bath.";
      return;
    }
    if (tonight.tap().isEmpty()) {
      waterWords =
          units.words(mix.water())
              + " of water. Say under Plan what the tap and the kettle have, and it is worked out"
              + " here how much of each.";
      return;
    }
    Temperature target = load.recipe().temperature();
    Temperature room = tonight.kitchen().orElse(target);
    try {
      TemperingQuestion question =
          new TemperingQuestion(
              target,
              load.fill(),
              List.of(new Liquid("stock", mix.concentrate(), room)),
              tonight.waters(),
              Optional.empty());
      Temper.Answer answer = new Temper().answer(question);
      answer.cautions().forEach(caution -> cautions.add(CautionView.of(caution)));
      say(answer, target, room);
    } catch (BadValueException refusal) {
      waterWords = String.valueOf(refusal.getMessage());
    }
  }

  private void say(Temper.Answer answer, Temperature target, Temperature room) {
    String stockWords = "The stock is taken to have " + units.words(room) + ". ";
    if (answer.tempering() instanceof Tempering.Reached reached) {
      addPours(reached.pour());
      waterWords = stockWords + "Together they have " + units.words(target) + ".";
    } else {
      Tempering.CannotBeReached not = (Tempering.CannotBeReached) answer.tempering();
      addPours(not.nearestPour());
      waterWords =
          stockWords
              + units.words(target)
              + " cannot be reached with these waters; the nearest is "
              + units.words(not.nearest())
              + ".";
    }
    alternative =
        "Or work at the temperature there is: without tempering it has "
            + units.words(answer.asItComes())
            + "; change the load to that and the time follows.";
  }

  private void addPours(List<Liquid> pours) {
    for (Liquid pour : pours) {
      if (pour.volume().millilitres() > 0) {
        waters.add(
            new LoadPage.Pour(
                pour.name(), units.words(pour.volume()), units.words(pour.temperature())));
      }
    }
  }
}
