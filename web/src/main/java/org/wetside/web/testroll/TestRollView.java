package org.wetside.web.testroll;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.testroll.RollPieces;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.ThreeTimes;

/**
 * A test roll planned.
 *
 * @param film in the user's words; null when it was not said
 * @param exposureIndex that the meter is set to; null when it was not said
 * @param developer in the user's words; null when it was not said
 * @param temperatureC of the developer; null when it was not said
 * @param metered what the meter says, for example {@code 1/60 at f/8}
 * @param camera what the camera can be set to
 * @param frames every frame in its order
 * @param pieces the three pieces
 * @param gauge lengths to cut
 * @param steps what is done, in its order
 * @param notes how sure the result will be
 */
public record TestRollView(
    @Nullable String film,
    @Nullable Double exposureIndex,
    @Nullable String developer,
    @Nullable Double temperatureC,
    String metered,
    String camera,
    List<FrameView> frames,
    List<TestPieceView> pieces,
    GaugeView gauge,
    List<TestStepView> steps,
    List<String> notes) {
  /** Keeps unmodifiable copies. */
  public TestRollView {
    frames = List.copyOf(frames);
    pieces = List.copyOf(pieces);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /**
   * One piece of the roll.
   *
   * @param piece 1 to 3
   * @param nicks by which it is told in the dark
   * @param firstFrame of it
   * @param lastFrame of it, to the end of which it is cut or beyond
   * @param developSeconds how long it is developed
   * @param develop the same in minutes and seconds
   */
  public record TestPieceView(
      int piece, int nicks, int firstFrame, int lastFrame, double developSeconds, String develop) {}

  /**
   * Lengths to cut.
   *
   * @param pitchMm from frame to frame
   * @param fromFirstFrameMm where the cuts lie, from the beginning of frame 1
   * @param cutToCutMm from the first cut to the second
   * @param marginMm how far a cut may be off either way
   */
  public record GaugeView(
      double pitchMm, List<Double> fromFirstFrameMm, double cutToCutMm, double marginMm) {
    /** Keeps an unmodifiable copy. */
    public GaugeView {
      fromFirstFrameMm = List.copyOf(fromFirstFrameMm);
    }

    static GaugeView of(RollPieces roll) {
      return new GaugeView(
          RollPieces.PITCH,
          IntStream.range(1, RollPieces.PIECES).mapToObj(roll::cutAfter).toList(),
          roll.fromCutToCut(),
          RollPieces.PITCH);
    }
  }

  /**
   * One thing to do.
   *
   * @param step short name that stays the same
   * @param part heading under which it stands
   * @param title it in few words
   * @param text what is done
   */
  public record TestStepView(String step, String part, String title, String text) {}

  /** That roll. */
  public static TestRollView of(TestRoll roll) {
    RollPlan plan = roll.plan();
    Optional<ExposureIndex> index = roll.index();
    GaugeView gauge = GaugeView.of(plan.pieces());
    List<TestPieceView> pieces = pieces(plan);
    TestRollWords words = new TestRollWords(plan, index, gauge, pieces);
    return new TestRollView(
        said(roll.film()),
        index.map(ExposureIndex::isoArithmetic).orElse(null),
        said(roll.bath()),
        roll.temperature().map(Temperature::celsius).orElse(null),
        plan.metered().toString(),
        plan.range().toString(),
        plan.frames().stream().map(frame -> FrameView.of(frame, index)).toList(),
        pieces,
        gauge,
        Stream.of(TestStep.values())
            .map(
                step ->
                    new TestStepView(
                        step.word(),
                        words.heading(step.part()),
                        words.title(step),
                        words.text(step)))
            .toList(),
        words.notes());
  }

  /** What is said of a step. */
  TestStepView words(TestStep step) {
    return steps.stream().filter(view -> view.step().equals(step.word())).findFirst().orElseThrow();
  }

  private static @Nullable String said(String words) {
    return words.isEmpty() ? null : words;
  }

  private static List<TestPieceView> pieces(RollPlan plan) {
    ThreeTimes times = plan.times();
    RollPieces roll = plan.pieces();
    return Stream.of(
            piece(1, roll, times.shortest()),
            piece(2, roll, times.middle()),
            piece(3, roll, times.longest()))
        .toList();
  }

  private static TestPieceView piece(int piece, RollPieces roll, Duration time) {
    int first = roll.blankFrame(piece);
    return new TestPieceView(
        piece,
        piece,
        first,
        first + roll.framesOfPiece() - 1,
        TimeSpan.toSeconds(time),
        TimeWords.clock(time));
  }
}
