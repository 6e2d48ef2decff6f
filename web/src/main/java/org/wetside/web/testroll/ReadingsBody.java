package org.wetside.web.testroll;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.TypedReading;

/**
 * Densities of the frames of a piece; those not named stay as they were.
 *
 * @param readings what was read
 * @param curve whether the curve is made of them now; not when not said
 * @param instrument name of what read them, of those written down; null when it is not said
 */
public record ReadingsBody(
    @Nullable List<@Nullable FrameReadingBody> readings,
    @Nullable Boolean curve,
    @Nullable String instrument) {
  private static final int NO_FRAME = 0;

  /**
   * One frame.
   *
   * @param frame number on the roll; needed
   * @param first density as it was read, as text; null or empty takes it back
   * @param second the same read once more
   */
  public record FrameReadingBody(
      @Nullable Integer frame, @Nullable String first, @Nullable String second) {}

  /** The instrument, empty when it was not said. */
  String reader() {
    return text(instrument);
  }

  /**
   * The same, to be kept.
   *
   * @throws BadValueException naming a frame that is not read on this piece
   */
  List<TypedReading> typed(KeptTestRoll kept, int piece) {
    return (readings == null ? List.<@Nullable FrameReadingBody>of() : readings)
        .stream().map(reading -> typed(reading, kept, piece)).toList();
  }

  private static TypedReading typed(
      @Nullable FrameReadingBody reading, KeptTestRoll kept, int piece) {
    Integer said = reading == null ? null : reading.frame();
    int number = said == null ? NO_FRAME : said;
    var frames = kept.framesToRead(piece);
    if (reading == null || frames.stream().noneMatch(frame -> frame.frame() == number)) {
      throw new BadValueException(
          "frame of a reading",
          said == null ? "nothing" : said.toString(),
          "piece "
              + piece
              + " is read at frames "
              + frames.get(0).frame()
              + " to "
              + frames.get(frames.size() - 1).frame());
    }
    return new TypedReading(number, text(reading.first()), text(reading.second()));
  }

  private static String text(@Nullable String said) {
    return said == null ? "" : said;
  }
}
