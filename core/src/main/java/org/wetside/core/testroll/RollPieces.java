package org.wetside.core.testroll;

import org.wetside.core.quantity.BadValueException;

/**
 * How a roll of 35 mm film is shared out: three equal pieces, each of one blank frame, a series of
 * exposures, and two frames left unexposed at its end to cut through.
 *
 * @param frames on the roll: 36
 */
public record RollPieces(int frames) {
  /** Pieces of one roll. */
  public static final int PIECES = 3;

  /** From frame to frame, in mm: eight perforations of 4.75 mm; common practice. */
  public static final double PITCH = 38.0;

  private static final int FRAMES = 36;
  private static final int SHORT_ROLL = 24;
  private static final int BLANK = 1;
  private static final int TO_CUT = 2;

  /**
   * Checks the roll.
   *
   * @throws BadValueException naming a number of frames that gives no series long enough
   */
  public RollPieces {
    if (frames == SHORT_ROLL) {
      // 24 / 3 - 3 = 5 exposures, four stops apart: 4 x 0.30 = 1.20
      throw new BadValueException(
          "frames",
          "24",
          "five exposures a piece span log H 1.20, less than the 1.30 from the speed point to the"
              + " second point of the contrast triangle; a test roll has 36 frames");
    }
    if (frames != FRAMES) {
      throw new BadValueException(
          "frames", String.valueOf(frames), "a test roll is 35 mm film of 36 frames");
    }
  }

  /** The roll that a test is made on. */
  public static RollPieces ofWholeRoll() {
    return new RollPieces(FRAMES);
  }

  /** Frames of one piece, those to cut through with them. */
  public int framesOfPiece() {
    return frames / PIECES;
  }

  /** Frames of one piece that are exposed in steps. */
  public int exposures() {
    return framesOfPiece() - BLANK - TO_CUT;
  }

  /** Number on the roll, from 1, of the blank frame that begins a piece (1 to 3). */
  public int blankFrame(int piece) {
    checkPiece(piece);
    return (piece - 1) * framesOfPiece() + 1;
  }

  /**
   * Where a piece ends, in mm from the beginning of frame 1: between its two unexposed frames, so
   * that a cut one frame off either way touches no exposure. The third piece ends there too, before
   * what holds the film to its spool.
   */
  public double cutAfter(int piece) {
    checkPiece(piece);
    return (piece * framesOfPiece() - 1) * PITCH;
  }

  /** From one cut to the next, in mm. */
  public double fromCutToCut() {
    return framesOfPiece() * PITCH;
  }

  private static void checkPiece(int piece) {
    if (piece < 1 || piece > PIECES) {
      throw new BadValueException(
          "piece", String.valueOf(piece), "a roll is cut into pieces 1 to " + PIECES);
    }
  }
}
