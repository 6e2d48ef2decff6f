package org.wetside.core.testroll;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Stops;

/**
 * A whole roll planned: every frame, its setting, and the times of the three pieces.
 *
 * <p>The series runs from four stops under the meter to four over it. What a meter asks for gives
 * 8/S lux seconds (SE-S40) and the speed point lies at 0.80/S (ISO 6), log H 1.00 or 3.32 stops
 * below: that leaves 0.68 stops for a film faster than its box says. From the speed point the
 * contrast triangle reaches 1.30 in log H, to one stop over the meter, the average gradient 1.50,
 * to 1.66 over it, and the far point of contrast index 0.58 about 1.73, to 2.4 over it: that leaves
 * 1.6 stops for a film slower than its box says, which is the commoner case in a camera (common
 * practice).
 *
 * @param metered what a meter says for the evenly lit card, at the index on the film's box
 * @param range what the camera can be set to
 * @param times what the pieces are developed for
 */
public record RollPlan(CameraExposure metered, CameraRange range, ThreeTimes times) {
  /** Stops from the meter of the first exposure of a piece. */
  public static final int LEAST = -4;

  /** Stops from the meter of its last exposure. */
  public static final int MOST = 4;

  /**
   * Checks that the camera can make the series.
   *
   * @throws BadValueException saying how much more or less light would do, or that the camera spans
   *     too few stops
   */
  public RollPlan {
    new StepSettings(metered, range).aperture(LEAST, MOST);
  }

  /** How the roll is shared out. */
  public RollPieces pieces() {
    return RollPieces.ofWholeRoll();
  }

  /** The exposures of one piece, the least first, a stop apart; the same in each piece. */
  public List<FrameStep> series() {
    StepSettings settings = new StepSettings(metered, range);
    Aperture aperture = settings.aperture(LEAST, MOST);
    return IntStream.rangeClosed(LEAST, MOST)
        .mapToObj(stops -> new FrameStep(Stops.of(stops), settings.at(stops, aperture)))
        .toList();
  }

  /** Every frame of the roll in its order. */
  public List<PlannedFrame> frames() {
    RollPieces pieces = pieces();
    List<FrameStep> series = series();
    List<PlannedFrame> frames = new ArrayList<>();
    for (int piece = 1; piece <= RollPieces.PIECES; piece++) {
      int blank = pieces.blankFrame(piece);
      frames.add(new PlannedFrame(blank, piece, PlannedFrame.Kind.BLANK, null));
      for (int i = 0; i < series.size(); i++) {
        frames.add(new PlannedFrame(blank + 1 + i, piece, PlannedFrame.Kind.STEP, series.get(i)));
      }
      for (int frame = blank + 1 + series.size(); frame < blank + pieces.framesOfPiece(); frame++) {
        frames.add(new PlannedFrame(frame, piece, PlannedFrame.Kind.CUT, null));
      }
    }
    return List.copyOf(frames);
  }
}
