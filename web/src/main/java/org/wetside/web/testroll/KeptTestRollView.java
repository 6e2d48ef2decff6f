package org.wetside.web.testroll;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.RollPieces;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.TypedReading;

/**
 * A test roll on file.
 *
 * @param id its number
 * @param keptAt when it was begun, ISO 8601 in UTC
 * @param next the first step that is not ticked; null when all are
 * @param done the steps that were ticked, in their order
 * @param pieces what is known of each piece
 * @param plan how it is exposed, cut and developed
 */
public record KeptTestRollView(
    long id,
    String keptAt,
    @Nullable String next,
    List<TickedStepView> done,
    List<PieceStateView> pieces,
    TestRollView plan) {
  /** Keeps unmodifiable copies. */
  public KeptTestRollView {
    done = List.copyOf(done);
    pieces = List.copyOf(pieces);
  }

  /**
   * A step that was ticked.
   *
   * @param step its short name
   * @param at when, ISO 8601 in UTC
   * @param note said with it; empty for none
   */
  public record TickedStepView(String step, String at, String note) {
    static Stream<TickedStepView> of(KeptTestRoll kept, TestStep step) {
      return Stream.ofNullable(kept.done().get(step))
          .map(done -> new TickedStepView(step.word(), done.at().toString(), done.note()));
    }
  }

  /**
   * A piece.
   *
   * @param piece 1 to 3
   * @param developedSeconds how long it was developed; null before
   * @param temperatureC of the developer; null when nobody said
   * @param developedOn the day, year-month-day; null before
   * @param curve number of the curve that was read from it; null before
   * @param readings what was typed for its frames
   */
  public record PieceStateView(
      int piece,
      @Nullable Double developedSeconds,
      @Nullable Double temperatureC,
      @Nullable String developedOn,
      @Nullable Long curve,
      List<FrameReadingView> readings) {
    /** Keeps an unmodifiable copy. */
    public PieceStateView {
      readings = List.copyOf(readings);
    }

    static PieceStateView of(KeptTestRoll kept, int piece) {
      PieceDeveloped developed = kept.developed().get(piece);
      return new PieceStateView(
          piece,
          developed == null ? null : TimeSpan.toSeconds(developed.time()),
          developed == null ? null : developed.temperature().map(Temperature::celsius).orElse(null),
          developed == null ? null : developed.day().toString(),
          kept.curves().get(piece),
          kept.framesToRead(piece).stream()
              .map(frame -> kept.typedFor(frame.frame()))
              .filter(typed -> !typed.isEmpty())
              .map(FrameReadingView::of)
              .toList());
    }
  }

  /**
   * What was typed for a frame, number or not.
   *
   * @param frame number on the roll
   * @param first the first time
   * @param second the second time
   */
  public record FrameReadingView(int frame, String first, String second) {
    static FrameReadingView of(TypedReading typed) {
      return new FrameReadingView(typed.frame(), typed.first(), typed.second());
    }
  }

  /** That roll. */
  public static KeptTestRollView of(KeptTestRoll kept) {
    return new KeptTestRollView(
        kept.id(),
        kept.keptAt().toString(),
        kept.next().map(TestStep::word).orElse(null),
        Stream.of(TestStep.values()).flatMap(step -> TickedStepView.of(kept, step)).toList(),
        Stream.iterate(1, piece -> piece <= RollPieces.PIECES, piece -> piece + 1)
            .map(piece -> PieceStateView.of(kept, piece))
            .toList(),
        TestRollView.of(kept.roll()));
  }
}
