package org.wetside.web.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;
import org.wetside.core.strip.StepScale;

/**
 * A strip of film that was exposed in steps, developed and read.
 *
 * @param id its number
 * @param film as it was typed
 * @param developer as it was typed
 * @param dilution of it
 * @param minutes development time
 * @param temperatureC of the developer; null when nobody said
 * @param vessel small, large, rotary or tray; empty when nobody said
 * @param developedOn the day; null when nobody said
 * @param light calibrated, estimated, relative or camera
 * @param column what the places are: logH, step or stops
 * @param clearLogH log exposure where nothing of the tablet is in the way; null without a tablet
 * @param tablet its densities, the first step first; null without one
 * @param meteredIndex index the meter was set to; null without a camera
 * @param baseFog density of base plus fog as it was said; null when it is to be found
 * @param densityStep to what the densities are rounded
 * @param readings place and density of each, as they were typed
 * @param tabletName of the step tablet; empty when nobody said
 * @param instrument what read the densities; empty when nobody said
 * @param calibratedOn day of the calibration it read by; null when not known
 * @param note any words
 */
public record StripView(
    long id,
    String film,
    String developer,
    String dilution,
    double minutes,
    @Nullable Double temperatureC,
    String vessel,
    @Nullable String developedOn,
    String light,
    String column,
    @Nullable Double clearLogH,
    @Nullable List<Double> tablet,
    @Nullable Double meteredIndex,
    @Nullable Double baseFog,
    double densityStep,
    List<List<Double>> readings,
    String tabletName,
    String instrument,
    @Nullable String calibratedOn,
    String note) {
  static StripView of(KeptStrip kept) {
    FilmStrip strip = kept.strip();
    StepScale scale = strip.scale();
    boolean tablet = scale instanceof StepScale.TabletSteps;
    return new StripView(
        kept.id(),
        strip.film(),
        strip.developer(),
        strip.dilution().label(),
        Digits.minutes(TimeSpan.toSeconds(strip.time())),
        strip.temperature().map(Temperature::celsius).orElse(null),
        strip.vessel().word(),
        strip.developedOn().map(Object::toString).orElse(null),
        strip.light().word(),
        scale.column(),
        tablet ? ((StepScale.TabletSteps) scale).clear().log10LuxSeconds() : null,
        tablet
            ? ((StepScale.TabletSteps) scale)
                .densities().stream().map(OpticalDensity::value).toList()
            : null,
        scale instanceof StepScale.CameraStops camera ? camera.metered().isoArithmetic() : null,
        strip.baseFog().map(OpticalDensity::value).orElse(null),
        strip.densityStep(),
        strip.readings().stream().map(one -> List.of(one.place(), one.density().value())).toList(),
        strip.with().tablet(),
        strip.with().instrument(),
        strip.with().calibratedOn().map(Object::toString).orElse(null),
        strip.note());
  }
}
