package org.wetside.web.mixing;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.PredictDrift;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.thermal.TimedReading;

/**
 * A question about a drifting bath as it was typed; null or blank is not said.
 *
 * @param room surroundings, for example {@code 15C}; without it they are found from the readings
 * @param aim centre of the band asked for, for example {@code 20C}
 * @param within half width of the band, for example {@code 0.5K}; 0.5 K when not said
 * @param from beginning of the stretch whose mean is asked, for example {@code 5:00}
 * @param to its end
 * @param ahead moment whose temperature is asked, counted like the readings
 */
public record DriftQuery(
    @Nullable String room,
    @Nullable String aim,
    @Nullable String within,
    @Nullable String from,
    @Nullable String to,
    @Nullable String ahead) {
  private static final TemperatureDifference USUAL_BAND = TemperatureDifference.ofKelvins(0.5);

  /**
   * The question in the types of the trade.
   *
   * @throws BadValueException when something typed is not understood
   */
  public PredictDrift.Question question(List<TimedReading> readings) {
    TemperatureDifference half =
        Typed.maybe(within).map(TemperatureDifference::parse).orElse(USUAL_BAND);
    return new PredictDrift.Question(
        readings,
        Typed.maybe(room).map(Temperature::parse),
        Typed.maybe(aim).map(text -> TemperatureRange.around(Temperature.parse(text), half)),
        stretch(),
        Typed.maybe(ahead).map(text -> TimeSpan.parse("time ahead", text)));
  }

  private Optional<PredictDrift.Stretch> stretch() {
    if (Typed.maybe(to).isEmpty()) {
      if (Typed.maybe(from).isPresent()) {
        throw new BadValueException("end of the stretch", "nothing", "give it with its beginning");
      }
      return Optional.empty();
    }
    return Optional.of(
        new PredictDrift.Stretch(
            TimeSpan.parse("beginning of the stretch", Typed.maybe(from).orElse("0:00")),
            TimeSpan.parse(
                "end of the stretch", Typed.required("end of the stretch", to, "9:00"))));
  }
}
