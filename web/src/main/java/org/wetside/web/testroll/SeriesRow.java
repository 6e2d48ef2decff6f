package org.wetside.web.testroll;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of the table by which a roll is exposed: the same setting in each of the pieces.
 *
 * @param mark {@code −4}, {@code +4}, {@code blank}, {@code cut}
 * @param setting what is set on the camera
 * @param logH log exposure, empty for an unexposed frame
 * @param frames one number of each piece
 */
public record SeriesRow(String mark, String setting, String logH, List<Integer> frames) {
  /** Keeps an unmodifiable copy. */
  public SeriesRow {
    frames = List.copyOf(frames);
  }

  /** The whole table: as many lines as a piece has frames. */
  static List<SeriesRow> of(TestRollView view) {
    int pieces = view.pieces().size();
    int length = view.frames().size() / pieces;
    List<SeriesRow> rows = new ArrayList<>();
    for (int i = 0; i < length; i++) {
      List<Integer> numbers = new ArrayList<>();
      for (int piece = 0; piece < pieces; piece++) {
        numbers.add(view.frames().get(piece * length + i).frame());
      }
      FrameView frame = view.frames().get(i);
      rows.add(new SeriesRow(frame.mark(), frame.setting(), frame.logExposure(), numbers));
    }
    return rows;
  }

  /** Whether its density is read: an exposure or the blank. */
  public boolean isRead() {
    return !mark.equals("cut");
  }
}
