package org.wetside.web.testroll;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.Stops;
import org.wetside.core.sensitometry.ExposureSeries;
import org.wetside.core.testroll.CameraExposure;
import org.wetside.core.testroll.PlannedFrame;

/**
 * One frame of a test roll.
 *
 * @param frame number on the roll, from 1
 * @param piece 1 to 3
 * @param kind {@code blank}, {@code step} or {@code cut}
 * @param stops from the meter, positive for more light; null for an unexposed frame
 * @param relativeLogH the same in log10; null for an unexposed frame
 * @param logH log10 of lux seconds at the film, by the meter and not by a calibrated light; null
 *     without an index, and for an unexposed frame
 * @param shutter mark of the shutter dial; null for an unexposed frame
 * @param aperture mark of the lens; null for an unexposed frame
 * @param shutterSeconds the exact time behind the mark
 * @param fNumber the exact number behind the mark
 */
public record FrameView(
    int frame,
    int piece,
    String kind,
    @Nullable Double stops,
    @Nullable Double relativeLogH,
    @Nullable Double logH,
    @Nullable String shutter,
    @Nullable String aperture,
    @Nullable Double shutterSeconds,
    @Nullable Double fNumber) {

  static FrameView of(PlannedFrame frame, Optional<ExposureIndex> index) {
    Optional<Stops> stops = frame.stops();
    Optional<CameraExposure> set = frame.exposure();
    return new FrameView(
        frame.frame(),
        frame.piece(),
        frame.kind().name().toLowerCase(Locale.ROOT),
        stops.map(Stops::count).orElse(null),
        frame.relativeLogH().isPresent() ? frame.relativeLogH().getAsDouble() : null,
        stops.flatMap(some -> index.map(at -> logH(at, some))).orElse(null),
        set.map(one -> one.shutter().toString()).orElse(null),
        set.map(one -> one.aperture().toString()).orElse(null),
        set.map(one -> one.shutter().exactSeconds()).orElse(null),
        set.map(one -> one.aperture().exactNumber()).orElse(null));
  }

  private static double logH(ExposureIndex index, Stops stops) {
    List<LogExposure> one = ExposureSeries.inCamera(index, List.of(stops));
    return one.get(0).log10LuxSeconds();
  }

  /** What is set on the camera, or that the lens stays capped. */
  public String setting() {
    return shutter == null ? "lens capped" : shutter + " at " + aperture;
  }

  /** What it is for: {@code −4}, {@code +4}, {@code blank}, {@code cut}. */
  public String mark() {
    if (stops == null) {
      return kind;
    }
    return (stops > 0 ? "+" : "") + String.valueOf(Math.round(stops)).replace('-', '−');
  }

  /** Its log exposure with two decimals, in lux seconds where the index is known. */
  public String logExposure() {
    Double value = logH == null ? relativeLogH : logH;
    return value == null ? "" : String.format(Locale.ROOT, "%+.2f", value + 0.0).replace('-', '−');
  }
}
