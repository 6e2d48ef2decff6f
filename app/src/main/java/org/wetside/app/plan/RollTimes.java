package org.wetside.app.plan;

import java.util.List;
import java.util.Optional;
import org.wetside.app.times.AskTime;
import org.wetside.app.times.TimeRequest;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Units;

/** The time one roll wants for itself in a developer. */
public final class RollTimes {
  private final AskTime askTime;

  /** By these answers. */
  public RollTimes(AskTime askTime) {
    this.askTime = askTime;
  }

  /**
   * Its time, or why there is none.
   *
   * @param steps of the process or the run, which say how the tank is moved
   */
  public PreparedLoad.TimedRoll of(Roll roll, Recipe recipe, Tank tank, List<Step> steps) {
    if (roll.described().exposureIndex().isEmpty()) {
      return none(
          roll,
          "say which index it was exposed at; without it no time is honest."
              + askTime
                  .indexInUse(roll.described().film(), recipe.developer())
                  .map(own -> " Your own of it in " + recipe.developer() + " is " + whole(own))
                  .orElse(""));
    }
    try {
      TimeAnswer answer = askTime.answer(request(roll, recipe, tank, steps));
      if (answer instanceof TimeAnswer.Estimate estimate) {
        return new PreparedLoad.TimedRoll(
            roll,
            Optional.of(
                new ChosenTime(
                    estimate.time(),
                    estimate.standing(),
                    estimate.headline().entry().citation().toString(),
                    Optional.of(estimate.band()))),
            "",
            aboutIndex(estimate));
      }
      TimeAnswer.NoHonestTime no = (TimeAnswer.NoHonestTime) answer;
      return none(
          roll,
          no.reasons().isEmpty()
              ? "no honest time."
              : TimeWords.of(no.reasons().get(0), Units.METRIC));
    } catch (BadValueException notAsked) {
      return none(roll, notAsked.getMessage() + ".");
    }
  }

  /**
   * The question that a roll asks.
   *
   * @param roll one whose index is known
   */
  public static TimeRequest request(Roll roll, Recipe recipe, Tank tank, List<Step> steps) {
    return new TimeRequest(
        roll.described().film(),
        recipe.developer(),
        recipe.dilution().label(),
        roll.described().exposureIndex().orElseThrow().toString(),
        recipe.temperature().toString(),
        vessel(tank, steps).word(),
        roll.described().size().format().word(),
        agitation(steps),
        "",
        false);
  }

  /** A small tank on rollers is a rotary tube as far as a time depends on it. */
  private static Vessel vessel(Tank tank, List<Step> steps) {
    return manners(steps).contains(Manner.ROTARY) ? Vessel.ROTARY : tank.vessel();
  }

  private static String agitation(List<Step> steps) {
    for (Manner manner : manners(steps)) {
      if (manner == Manner.STAND || manner == Manner.SEMI_STAND) {
        return manner.word();
      }
    }
    return "";
  }

  private static List<Manner> manners(List<Step> steps) {
    return steps.stream()
        .filter(step -> step.kind().developing())
        .map(Step::agitation)
        .map(agitation -> agitation.manner())
        .toList();
  }

  /** What an own index in use means for it; empty when nothing. */
  private static String aboutIndex(TimeAnswer.Estimate estimate) {
    return estimate.warnings().stream()
        .filter(
            warning ->
                warning instanceof TimeWarning.CountsAsMakers
                    || warning instanceof TimeWarning.OffOwnIndex)
        .map(TimeWords::of)
        .findFirst()
        .orElse("");
  }

  private static String whole(ExposureIndex index) {
    return Math.round(index.isoArithmetic()) + ".";
  }

  private static PreparedLoad.TimedRoll none(Roll roll, String why) {
    return new PreparedLoad.TimedRoll(roll, Optional.empty(), why, "");
  }
}
