package org.wetside.web.wash;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.wash.PlanDrying;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.wash.Drying;

/**
 * From the last water to dry film.
 *
 * @param dilution of the wetting agent
 * @param dilutionStanding how that is known
 * @param agentMl of wetting agent to measure out
 * @param waterMl distilled water
 * @param leastSeconds shortest time in it
 * @param mostSeconds longest time in it
 * @param source who prints the times
 * @param hung when the film is hung up; null when it was not said
 * @param ways where it may hang, the usual place first
 * @param text what to measure out, in one sentence
 */
public record DryingView(
    String dilution,
    String dilutionStanding,
    double agentMl,
    double waterMl,
    double leastSeconds,
    double mostSeconds,
    String source,
    @Nullable String hung,
    List<WayView> ways,
    String text) {

  /**
   * One place to hang.
   *
   * @param place short name
   * @param words what it is like
   * @param leastMinutes shortest time until it is dry
   * @param mostMinutes not to be touched before
   * @param warmestC it may be there
   * @param doNotTouchUntil by the clock; null when it was not said when the film is hung
   * @param source where it stands
   * @param standing how it is known
   * @param note what to know of it; may be empty
   */
  public record WayView(
      String place,
      String words,
      long leastMinutes,
      long mostMinutes,
      double warmestC,
      @Nullable String doNotTouchUntil,
      String source,
      String standing,
      String note) {

    static WayView of(Drying.Way way, Optional<LocalTime> hung) {
      return new WayView(
          way.place(),
          way.words(),
          way.least().toMinutes(),
          way.most().toMinutes(),
          way.warmest().celsius(),
          hung.map(at -> at.plus(way.most()).truncatedTo(ChronoUnit.MINUTES).toString())
              .orElse(null),
          way.citation().toString(),
          way.standing().word(),
          way.note());
    }
  }

  /** The view of an answer, its sentence in those units. */
  public static DryingView of(PlanDrying.Answer answer, Optional<LocalTime> hung, Units units) {
    Drying.Agent agent = answer.about().agent();
    Volume concentrate = answer.agent().concentrate();
    return new DryingView(
        answer.agent().dilution().label(),
        answer.dilutionOnFile() ? agent.dilutionStanding().word() : "measured",
        concentrate.millilitres(),
        answer.agent().water().millilitres(),
        TimeSpan.toSeconds(agent.least()),
        TimeSpan.toSeconds(agent.most()),
        agent.citation().toString(),
        hung.map(at -> at.truncatedTo(ChronoUnit.MINUTES).toString()).orElse(null),
        answer.about().ways().stream().map(way -> WayView.of(way, hung)).toList(),
        units.words(concentrate)
            + " of wetting agent in "
            + units.words(answer.agent().water())
            + " of distilled water, "
            + agent.least().toMinutes()
            + " to "
            + agent.most().toMinutes()
            + " min; what the bottle says comes first.");
  }
}
