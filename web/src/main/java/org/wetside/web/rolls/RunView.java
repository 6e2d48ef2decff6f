package org.wetside.web.rolls;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.drawer.RollRecord;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/**
 * One run a roll was in. Complete by itself: nothing in it must be looked up elsewhere.
 *
 * @param run its id
 * @param load the load it came from; null when there was none
 * @param phase ready, running, waiting, finished, abandoned
 * @param tank name of the tank
 * @param place where in the tank this roll was
 * @param sharedWith the other rolls in the tank
 * @param process name of the process
 * @param developer name of the developer
 * @param dilution how it was made
 * @param temperatureC planned temperature of the developer; null when not said
 * @param volumeMl liquid in the tank; null when not said
 * @param timeStanding how the development time was known
 * @param timeSource where it stands
 * @param startedAt the first pour; null before
 * @param endedAt the end; null before
 * @param steps planned and actual
 * @param readings temperatures as read and corrected
 * @param mishaps what went wrong, with the advice given
 * @param notes what was written down
 * @param missed cues that nobody was there for
 * @param gaps stretches that nobody watched
 * @param events everything stored, in order
 */
public record RunView(
    long run,
    @Nullable Long load,
    String phase,
    String tank,
    String place,
    List<String> sharedWith,
    String process,
    String developer,
    String dilution,
    @Nullable Double temperatureC,
    @Nullable Double volumeMl,
    String timeStanding,
    String timeSource,
    @Nullable String startedAt,
    @Nullable String endedAt,
    List<RunStepView> steps,
    List<ReadingView> readings,
    List<String> mishaps,
    List<String> notes,
    List<String> missed,
    List<GapView> gaps,
    List<EventView> events) {
  /**
   * A temperature that was read.
   *
   * @param at when
   * @param bath the bath it was read in
   * @param thermometer its name; may be empty
   * @param rawC as read
   * @param correctedC after the thermometer's offset
   */
  public record ReadingView(
      String at, String bath, String thermometer, double rawC, double correctedC) {}

  /**
   * Time nobody watched.
   *
   * @param from last sign of life
   * @param to back again
   */
  public record GapView(String from, String to) {}

  /** All runs of a roll, the last first. */
  public static List<RunView> all(RollRecord record) {
    return record.runs().stream().map(ran -> of(ran, record.roll().number())).toList();
  }

  private static RunView of(RollRecord.Ran ran, String number) {
    RunCard card = ran.card();
    RunState state = ran.state();
    List<ReadingView> readings = new ArrayList<>();
    List<String> mishaps = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    List<GapView> gaps = new ArrayList<>();
    for (RunEvent event : state.applied()) {
      if (event.what() instanceof Happening.ReadingTaken reading) {
        readings.add(
            new ReadingView(
                event.occurredAt().toString(),
                EventView.bath(state, event),
                reading.thermometer(),
                reading.raw().celsius(),
                reading.corrected().celsius()));
      } else if (event.what() instanceof Happening.Mishap mishap) {
        mishaps.add(
            mishap.advice().isBlank() ? mishap.what() : mishap.what() + ": " + mishap.advice());
      } else if (event.what() instanceof Happening.Note note) {
        notes.add(note.text());
      } else if (event.what() instanceof Happening.CueMissed cue) {
        missed.add(cue.cue());
      } else if (event.what() instanceof Happening.Gap gap) {
        gaps.add(new GapView(gap.from().toString(), gap.to().toString()));
      }
    }
    return new RunView(
        card.id(),
        card.load().orElse(null),
        state.phase().word(),
        card.tank(),
        place(card, number),
        card.rolls().stream()
            .map(RollInTank::number)
            .filter(other -> !other.equalsIgnoreCase(number))
            .toList(),
        card.processName(),
        card.developer(),
        card.dilution().label(),
        card.temperature().map(Temperature::celsius).orElse(null),
        card.volume().map(Volume::millilitres).orElse(null),
        card.timeStanding().word(),
        card.timeSource(),
        text(state.startedAt()),
        text(state.endedAt()),
        RunStepView.all(state, ran.taken()),
        readings,
        mishaps,
        notes,
        missed,
        gaps,
        state.events().stream().map(event -> EventView.of(state, event)).toList());
  }

  private static String place(RunCard card, String number) {
    return card.rolls().stream()
        .filter(roll -> roll.number().equalsIgnoreCase(number))
        .map(RollInTank::place)
        .findFirst()
        .orElse("");
  }

  private static @Nullable String text(Optional<Instant> at) {
    return at.map(Instant::toString).orElse(null);
  }
}
