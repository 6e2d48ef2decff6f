package org.wetside.web.testroll;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PlannedFrame;
import org.wetside.core.testroll.RollPieces;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.TestStep;

/**
 * The roll, its pieces one below the other: what was developed is printed, what is to come is
 * drawn. The taller the bar of a frame, the more light it gets.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param rows the pieces
 * @param description the same in words
 */
public record RollDrawing(double width, double height, List<Piece> rows, String description) {
  /** For a wide sheet. */
  static final double WIDE = 840;

  /** For a narrow one. */
  static final double NARROW = 358;

  private static final double FILM = 54;
  private static final double ROW = 104;
  private static final double LABEL = 24;
  private static final double LEAST_BAR = 5;
  private static final double BAR_PER_STOP = 5.2;

  /** Keeps an unmodifiable copy. */
  public RollDrawing {
    rows = List.copyOf(rows);
  }

  /**
   * A piece.
   *
   * @param label what is said of it
   * @param top where its film begins
   * @param printed whether it was developed
   * @param frames its frames
   * @param cutX where it is cut from the next; past the drawing for the last
   */
  public record Piece(String label, double top, boolean printed, List<Frame> frames, double cutX) {
    /** Keeps an unmodifiable copy. */
    public Piece {
      frames = List.copyOf(frames);
    }

    /** Where its film ends. */
    public double bottom() {
      return top + FILM;
    }
  }

  /**
   * A frame.
   *
   * @param number on the roll
   * @param x where it begins
   * @param width of it
   * @param bar height of its bar; 0 for an unexposed one
   */
  public record Frame(int number, double x, double width, double bar) {}

  static RollDrawing of(KeptTestRoll kept, List<TestRollView.TestPieceView> pieces, double width) {
    RollPieces roll = kept.roll().plan().pieces();
    double pitch = width / roll.framesOfPiece();
    List<Piece> rows = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (TestRollView.TestPieceView piece : pieces) {
      boolean printed = kept.isDone(developing(piece.piece()));
      double top = (piece.piece() - 1) * ROW + LABEL;
      String label =
          "piece " + piece.piece() + (printed ? ", developed" : ", to develop " + piece.develop());
      words
          .append("Frames ")
          .append(piece.firstFrame())
          .append(" to ")
          .append(piece.lastFrame())
          .append(": ")
          .append(label)
          .append(". ");
      rows.add(
          new Piece(
              label,
              top,
              printed,
              frames(kept, piece.piece(), pitch),
              piece.piece() == RollPieces.PIECES ? width : (roll.framesOfPiece() - 1) * pitch));
    }
    return new RollDrawing(width, ROW * pieces.size(), rows, words.toString().strip());
  }

  private static TestStep developing(int piece) {
    return TestStep.fromWord("develop-" + piece);
  }

  private static List<Frame> frames(KeptTestRoll kept, int piece, double pitch) {
    List<Frame> frames = new ArrayList<>();
    for (PlannedFrame frame : kept.roll().plan().frames()) {
      if (frame.piece() == piece) {
        double bar =
            frame
                .stops()
                .map(stops -> LEAST_BAR + (stops.count() - RollPlan.LEAST) * BAR_PER_STOP)
                .orElse(0.0);
        frames.add(new Frame(frame.frame(), frames.size() * pitch, pitch, bar));
      }
    }
    return frames;
  }
}
