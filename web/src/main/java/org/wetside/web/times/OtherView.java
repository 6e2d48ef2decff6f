package org.wetside.web.times;

import java.util.List;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.Candidate;
import org.wetside.core.quantity.TimeSpan;

/**
 * Another way to the same time.
 *
 * @param seconds the time
 * @param time the same in minutes and seconds
 * @param text the entry it starts from
 * @param standing standing of its weakest step
 * @param source where the entry stands
 * @param bandSeconds nine in ten, low and high
 */
public record OtherView(
    double seconds,
    String time,
    String text,
    String standing,
    String source,
    List<Double> bandSeconds) {
  static OtherView of(Candidate candidate) {
    return new OtherView(
        TimeSpan.toSeconds(candidate.time()),
        TimeWords.clock(candidate.time()),
        TimeWords.of(candidate.entry()),
        candidate.standing().word(),
        candidate.entry().citation().toString(),
        TimeView.seconds(candidate.band()));
  }
}
