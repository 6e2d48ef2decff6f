package org.wetside.core.testroll;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Stops;

/**
 * One frame of a test roll.
 *
 * @param frame number on the roll, from 1
 * @param piece 1 to 3, the piece whose series it belongs to or follows
 * @param kind what it is for
 * @param step how it is exposed; null for a frame that stays unexposed
 */
public record PlannedFrame(int frame, int piece, Kind kind, @Nullable FrameStep step) {
  /** What a frame is for. */
  public enum Kind {
    /** Not exposed: base plus fog is read on it. */
    BLANK,
    /** One step of the series. */
    STEP,
    /** Not exposed: the film is cut at it. */
    CUT
  }

  /** Stops from what the meter said, positive for more light; empty for an unexposed frame. */
  public Optional<Stops> stops() {
    return Optional.ofNullable(step).map(FrameStep::stops);
  }

  /** log10 of its exposure over the metered one [-]; empty for an unexposed frame. */
  public OptionalDouble relativeLogH() {
    return step == null ? OptionalDouble.empty() : OptionalDouble.of(step.relativeLogH());
  }

  /** What is set on the camera; empty for an unexposed frame. */
  public Optional<CameraExposure> exposure() {
    return Optional.ofNullable(step).map(FrameStep::exposure);
  }
}
