package org.wetside.core.testroll;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A test roll on file, and how far it has come.
 *
 * @param id its number
 * @param roll what is measured
 * @param keptAt when it was begun
 * @param done the steps that were ticked
 * @param developed how pieces were really developed, by the piece
 * @param typed what was typed for frames, by the frame
 * @param curves number of the curve of each piece that was read, by the piece
 */
public record KeptTestRoll(
    long id,
    TestRoll roll,
    Instant keptAt,
    Map<TestStep, StepDone> done,
    Map<Integer, PieceDeveloped> developed,
    Map<Integer, TypedReading> typed,
    Map<Integer, Long> curves) {
  /** Keeps unmodifiable copies. */
  public KeptTestRoll {
    done = Map.copyOf(done);
    developed = Map.copyOf(developed);
    typed = Map.copyOf(typed);
    curves = Map.copyOf(curves);
  }

  /** The first step that was not ticked; empty when all were. */
  public Optional<TestStep> next() {
    return Stream.of(TestStep.values()).filter(step -> !isDone(step)).findFirst();
  }

  /** Whether a step was ticked. */
  public boolean isDone(TestStep step) {
    return done.containsKey(step);
  }

  /** Whether light has fallen on the roll: its plan then stands. */
  public boolean isExposed() {
    return isDone(TestStep.EXPOSE);
  }

  /** The frames of a piece whose density is read, in their order. */
  public List<PlannedFrame> framesToRead(int piece) {
    return roll.plan().frames().stream()
        .filter(frame -> frame.piece() == piece && frame.kind() != PlannedFrame.Kind.CUT)
        .toList();
  }

  /** The piece on which a frame is read; empty where none is. */
  public OptionalInt pieceReadAt(int frame) {
    return roll.plan().frames().stream()
        .filter(one -> one.frame() == frame && one.kind() != PlannedFrame.Kind.CUT)
        .mapToInt(PlannedFrame::piece)
        .findFirst();
  }

  /** What was typed for a frame. */
  public TypedReading typedFor(int frame) {
    return typed.getOrDefault(frame, new TypedReading(frame, "", ""));
  }

  /** Numbers of the curves, in the order of the pieces. */
  public List<Long> curveNumbers() {
    return Stream.of(1, 2, 3).flatMap(piece -> Stream.ofNullable(curves.get(piece))).toList();
  }
}
