package org.wetside.web.testroll;

import java.util.List;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.strip.StripTools;

/**
 * Model of the page on which the densities of a piece are typed.
 *
 * @param sheet the sheet
 * @param kept the roll
 * @param piece 1 to 3
 * @param developed how long it was developed, in minutes and seconds; empty when nobody said
 * @param frames the frames to read, the blank first
 * @param form as it is typed
 * @param tools what may have read them
 * @param logHWord what the log exposures are counted from
 */
public record ReadPiecePage(
    Sheet sheet,
    KeptTestRoll kept,
    int piece,
    String developed,
    List<FrameView> frames,
    FilledForm form,
    StripTools tools,
    String logHWord) {
  /** Keeps an unmodifiable copy. */
  public ReadPiecePage {
    frames = List.copyOf(frames);
  }

  /** Address of the roll. */
  public String path() {
    return TestRollAddress.of(kept);
  }

  /** Where the form is sent. */
  public String act() {
    return TestRollAddress.of(kept, piece);
  }

  /** Number of the curve that was read from it; empty before. */
  public String curve() {
    Long curve = kept.curves().get(piece);
    return curve == null ? "" : String.valueOf(curve);
  }

  /** Name of the field of a frame. */
  public static String field(int frame, boolean again) {
    return (again ? "b" : "a") + frame;
  }
}
