package org.wetside.web.bench;

import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.AskDilutions;
import org.wetside.core.plan.OtherDilution;
import org.wetside.core.quantity.TimeSpan;

/**
 * What a developer may be instead of what was planned.
 *
 * @param step index of the developer, for the event; null when it is over
 * @param planned the dilution of the load
 * @param others each with its new time, the shortest first; may be empty
 * @param why what to do where nothing is offered; empty when something is
 */
public record DilutionsView(
    @Nullable Integer step, String planned, List<OtherView> others, String why) {
  private static final String NOTHING_KNOWN =
      "No new time is known: finish at the planned time and note it.";
  private static final String OVER = "The developer is over: a new time has nothing to move.";

  /**
   * One dilution.
   *
   * @param dilution as the trade writes it
   * @param seconds the new time, from tank full to the next pour, in whole seconds
   * @param standing of the weakest of the films' times
   * @param source where the first film's time stands
   * @param apart films of the same tank that would want another time
   * @param refused why the run cannot take it any more, or null
   */
  public record OtherView(
      String dilution,
      long seconds,
      String standing,
      String source,
      List<ApartView> apart,
      @Nullable String refused) {
    static OtherView of(AskDilutions.Offer offer) {
      OtherDilution other = offer.other();
      return new OtherView(
          other.dilution().label(),
          whole(other.time().time()),
          other.time().standing().word(),
          other.time().source(),
          other.apart().stream()
              .map(film -> new ApartView(film.film(), whole(film.time().orElseThrow().time())))
              .toList(),
          offer.refused().orElse(null));
    }
  }

  /**
   * A film that would want another time.
   *
   * @param film film and index
   * @param seconds its own time
   */
  public record ApartView(String film, long seconds) {}

  /** Of what was found. */
  static DilutionsView of(AskDilutions.Found found) {
    OptionalInt step = found.step();
    return new DilutionsView(
        step.isPresent() ? step.getAsInt() : null,
        found.planned().label(),
        found.others().stream().map(OtherView::of).toList(),
        step.isEmpty() ? OVER : found.others().isEmpty() ? NOTHING_KNOWN : "");
  }

  private static long whole(Duration time) {
    return Math.round(TimeSpan.toSeconds(time));
  }
}
