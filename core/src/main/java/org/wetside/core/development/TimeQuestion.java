package org.wetside.core.development;

import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

/**
 * The conditions a time is wanted for.
 *
 * @param film the coating
 * @param format format, {@link FilmFormat#ANY} when not given
 * @param developer developer
 * @param dilution dilution, letters resolved
 * @param exposureIndex index the film was exposed at
 * @param temperature temperature of the bath
 * @param vessel tank
 * @param agitation way of agitating
 * @param aimContrast contrast index wanted [-]; empty for the source's own aim
 * @param thermometerUncertainty how far the thermometer may be off
 * @param outsideOrdinaryTemperatures whether a step beyond 18 to 24 °C is wished for explicitly
 */
public record TimeQuestion(
    Film film,
    FilmFormat format,
    Developer developer,
    Dilution dilution,
    ExposureIndex exposureIndex,
    Temperature temperature,
    Vessel vessel,
    Agitation agitation,
    Optional<Double> aimContrast,
    TemperatureDifference thermometerUncertainty,
    boolean outsideOrdinaryTemperatures) {
  /** What a thermometer is trusted to when nothing is known of it: 0.5 K. */
  public static final TemperatureDifference UNKNOWN_THERMOMETER =
      TemperatureDifference.ofKelvins(0.5);

  /** The ordinary question: own aim of the source, unknown thermometer, no unusual wishes. */
  public static TimeQuestion of(
      Film film,
      FilmFormat format,
      Developer developer,
      Dilution dilution,
      ExposureIndex exposureIndex,
      Temperature temperature,
      Vessel vessel) {
    return new TimeQuestion(
        film,
        format,
        developer,
        developer.resolve(dilution),
        exposureIndex,
        temperature,
        vessel,
        developer.usualAgitation(),
        Optional.empty(),
        UNKNOWN_THERMOMETER,
        false);
  }
}
