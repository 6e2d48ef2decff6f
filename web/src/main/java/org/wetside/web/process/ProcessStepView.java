package org.wetside.web.process;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.AgitationText;
import org.wetside.core.process.Cycle;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.TimeSpan;

/**
 * One step of a process over HTTP and on the command line.
 *
 * @param kind its word
 * @param bottle letter; null for water, for light, and where it is asked for
 * @param seconds from tank full to the next pour; null when the load says it
 * @param pourInSeconds from the beginning of the pour to tank full
 * @param drainLeadSeconds how long before the next pour the drain begins
 * @param agitation the whole schedule as one line that can be sent back
 * @param manner how the tank is moved
 * @param initialTurns turns of the first bout; null when it is counted in seconds, or there is none
 * @param initialSeconds length of the first bout
 * @param everySeconds from one cycle to the next
 * @param cycleTurns turns of a cycle; null when it is counted in seconds, or there is none
 * @param cycleSeconds length of a cycle
 * @param tap whether the tank is tapped after each bout
 * @param revolutionsPerMinute of a rotary drum
 * @param lowC colder end of the band; null when not stated
 * @param highC warmer end
 * @param backTo letter of the bottle the liquid goes back to; null when it is discarded
 * @param light dark, any or required
 * @param longestSeconds the longest it may last; null when it may not be lengthened
 * @param standing how its values are known
 * @param source what they are cited from
 */
public record ProcessStepView(
    String kind,
    @Nullable String bottle,
    @Nullable Double seconds,
    double pourInSeconds,
    double drainLeadSeconds,
    String agitation,
    String manner,
    @Nullable Integer initialTurns,
    @Nullable Double initialSeconds,
    @Nullable Double everySeconds,
    @Nullable Integer cycleTurns,
    @Nullable Double cycleSeconds,
    boolean tap,
    @Nullable Double revolutionsPerMinute,
    @Nullable Double lowC,
    @Nullable Double highC,
    @Nullable String backTo,
    String light,
    @Nullable Double longestSeconds,
    String standing,
    String source) {

  static ProcessStepView of(Step step) {
    AgitationSchedule agitation = step.agitation();
    return new ProcessStepView(
        step.kind().word(),
        step.bottle().orElse(null),
        seconds(step.duration()),
        TimeSpan.toSeconds(step.pourIn()),
        TimeSpan.toSeconds(step.drainLead()),
        AgitationText.of(agitation),
        agitation.manner().word(),
        turns(agitation.initial()),
        seconds(agitation.initial().map(Cycle::length)),
        agitation.interval().isZero() ? null : TimeSpan.toSeconds(agitation.interval()),
        turns(agitation.cycle()),
        seconds(agitation.cycle().map(Cycle::length)),
        agitation.tap(),
        agitation.revolutionsPerMinute() > 0 ? agitation.revolutionsPerMinute() : null,
        step.band().map(band -> band.low().celsius()).orElse(null),
        step.band().map(band -> band.high().celsius()).orElse(null),
        step.afterUse().bottle().orElse(null),
        step.light().word(),
        seconds(step.lengthenTo()),
        step.standing().word(),
        step.source());
  }

  private static @Nullable Double seconds(Optional<Duration> time) {
    return time.map(TimeSpan::toSeconds).orElse(null);
  }

  private static @Nullable Integer turns(Optional<Cycle> bout) {
    return bout.filter(Cycle::counted).map(Cycle::count).orElse(null);
  }
}
