package org.wetside.web.negatives;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.drawer.RollRecord;
import org.wetside.app.times.TimeWords;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.web.rolls.Days;
import org.wetside.web.rolls.EventView;
import org.wetside.web.rolls.RunStepView;
import org.wetside.web.rolls.RunView;

/**
 * One run on the record page: the figures of its view in words and clock times.
 *
 * @param view everything that is known of the run
 * @param day the day it began; null when it never did
 * @param bath developer, dilution and temperature
 * @param fill liquid in the tank; empty when not said
 * @param planned planned development time; empty when there was no developer
 * @param actual how long it really took; empty when it never came to it
 * @param standing how the planned time was known
 * @param steps the steps in words
 * @param readings readings in words
 * @param gaps gaps in words
 * @param events events in words
 * @param loadNote what was written on its load; may be empty
 */
public record RunPart(
    RunView view,
    @Nullable String day,
    String bath,
    String fill,
    String planned,
    String actual,
    Standing standing,
    List<StepLine> steps,
    List<String> readings,
    List<String> gaps,
    List<EventLine> events,
    String loadNote) {
  /**
   * A step in words.
   *
   * @param bath its bath, with the letter of the bottle
   * @param began clock time at which its pour began; empty when it was not reached
   * @param known whether that was pressed
   * @param planned planned time
   * @param actual time it took; empty when it was not reached
   * @param wentTo where the liquid went
   * @param standing how the planned time was known
   * @param source where it stands
   */
  public record StepLine(
      String bath,
      String began,
      String known,
      String planned,
      String actual,
      String wentTo,
      Standing standing,
      String source) {}

  /**
   * An event in words.
   *
   * @param at clock time
   * @param what what happened, and in which bath
   * @param who the screen, or the conductor
   * @param counted why it moved nothing; empty when it did
   */
  public record EventLine(String at, String what, String who, String counted) {}

  static List<RunPart> all(RollRecord record, Days days, Units units) {
    List<RunView> views = RunView.all(record);
    List<RunPart> parts = new ArrayList<>();
    for (int i = 0; i < views.size(); i++) {
      parts.add(of(views.get(i), record.loadOf(record.runs().get(i)), days, units));
    }
    return parts;
  }

  private static RunPart of(RunView view, Optional<Load> load, Days days, Units units) {
    Optional<RunStepView> developer =
        view.steps().stream().filter(step -> step.bath().contains("develop")).findFirst();
    return new RunPart(
        view,
        view.startedAt() == null ? null : days.day(Instant.parse(view.startedAt())),
        view.developer()
            + " "
            + view.dilution()
            + (view.temperatureC() == null ? "" : ", " + degrees(view.temperatureC(), units)),
        view.volumeMl() == null ? "" : millilitres(view.volumeMl(), units),
        developer.map(step -> clock(step.plannedSeconds())).orElse(""),
        developer.map(RunStepView::actualSeconds).map(RunPart::clock).orElse(""),
        Standing.fromWord(view.timeStanding()),
        view.steps().stream().map(step -> line(step, units)).toList(),
        view.readings().stream().map(reading -> line(reading, units)).toList(),
        view.gaps().stream().map(gap -> at(gap.from()) + " to " + at(gap.to())).toList(),
        view.events().stream().map(RunPart::line).toList(),
        load.map(Load::note).orElse(""));
  }

  private static StepLine line(RunStepView step, Units units) {
    return new StepLine(
        step.bath()
            + (step.bottle() == null ? "" : ", bottle " + step.bottle())
            + (step.takenMl() == null ? "" : ", " + millilitres(step.takenMl(), units)),
        step.beganAt() == null ? "" : at(step.beganAt()),
        step.known(),
        clock(step.plannedSeconds()),
        step.actualSeconds() == null ? "" : clock(step.actualSeconds()),
        step.wentTo(),
        Standing.fromWord(step.standing()),
        step.source());
  }

  private static String line(RunView.ReadingView reading, Units units) {
    String raw =
        reading.rawC() == reading.correctedC() ? "" : ", read as " + degrees(reading.rawC(), units);
    String by = reading.thermometer().isEmpty() ? "" : " by thermometer " + reading.thermometer();
    return at(reading.at())
        + ": "
        + degrees(reading.correctedC(), units)
        + " in the "
        + reading.bath()
        + raw
        + by;
  }

  private static EventLine line(EventView event) {
    String what = event.kind() + (event.bath().isEmpty() ? "" : ", " + event.bath());
    return new EventLine(
        at(event.at()),
        event.words().isEmpty() ? what : what + ": " + event.words(),
        event.screen(),
        event.counted());
  }

  private static String at(String moment) {
    return Days.clock(Instant.parse(moment));
  }

  private static String clock(double seconds) {
    return TimeWords.clock(Duration.ofMillis(Math.round(seconds * 1000)));
  }

  private static String degrees(double celsius, Units units) {
    return units.words(Temperature.ofCelsius(celsius));
  }

  private static String millilitres(double millilitres, Units units) {
    return units.words(Volume.ofMillilitres(millilitres));
  }
}
