package org.wetside.web.testroll;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.TestStep;

/** The sentences of a test roll: what is done at each step, and how sure the result will be. */
final class TestRollWords {
  /** Under this a tank inverted by hand may develop unevenly; common practice. */
  private static final Duration UNEVEN_UNDER = Duration.ofMinutes(5);

  private static final String SAME =
      "The same developer, mixed fresh in the same way, within 0.5 K of the others; the same tank,"
          + " filling and agitation; stop, fix and wash as always. The maker's safety data sheet and"
          + " your local rules come before this sheet.";

  private final RollPlan plan;
  private final String index;
  private final TestRollView.GaugeView gauge;
  private final List<TestRollView.TestPieceView> pieces;

  TestRollWords(
      RollPlan plan,
      Optional<ExposureIndex> index,
      TestRollView.GaugeView gauge,
      List<TestRollView.TestPieceView> pieces) {
    this.plan = plan;
    this.index =
        index.map(one -> "index " + plain(one.isoArithmetic())).orElse("the index of the box");
    this.gauge = gauge;
    this.pieces = List.copyOf(pieces);
  }

  String heading(TestStep.Part part) {
    return switch (part) {
      case PREPARE -> "Before, in daylight";
      case EXPOSE -> "At the camera";
      case CUT -> "In full dark";
      case DEVELOP -> "Three developments";
      case READ -> "On dry film";
    };
  }

  String title(TestStep step) {
    return switch (step) {
      case LEADER -> "Measure the leader of a spoilt film";
      case GAUGE -> "Fix two stops on the table";
      case CARD -> "Set up card, light and camera";
      case METER -> "Meter the card";
      case EXPOSE -> "Expose the 36 frames";
      case REWIND -> "Rewind and mark the cassette";
      case CUT -> "Cut the roll in full dark";
      case DEVELOP_1, DEVELOP_2, DEVELOP_3 ->
          "Develop piece " + step.piece() + " for " + pieces.get(step.piece() - 1).develop();
      case READ_1, READ_2, READ_3 -> "Read the densities of piece " + step.piece();
      case RESULT -> "Read the three curves together";
    };
  }

  String text(TestStep step) {
    return switch (step) {
      case LEADER ->
          "With a spoilt film: load it as you always do, wind on to frame 1, open the back. Mark the"
              + " film where frame 1 begins: at the edge of the gate, on the side of the take-up"
              + " spool. Take it out and measure from the tip of the leader to the mark; this is L."
              + " Do it twice. Where the two differ by more than 25 mm, lay the leader in more alike:"
              + " a cut may be off by "
              + plain(gauge.marginMm())
              + " mm and no more.";
      case GAUGE ->
          "On a table fix two stops that fingers find in the dark, from its edge: one at L + "
              + plain(gauge.fromFirstFrameMm().get(0))
              + " mm, one at "
              + plain(gauge.cutToCutMm())
              + " mm. Try it in daylight on the spoilt film.";
      case CARD ->
          "A plain card in even light that stays as it is: open shade, no passing clouds, no lamp"
              + " that flickers. Middle and corners are metered within a third of a stop. Camera on"
              + " a tripod, lens at infinity, so near that the card fills the frame, out of focus"
              + " and without your shadow.";
      case METER ->
          "Meter the card at "
              + index
              + ". This plan is for "
              + plan.metered()
              + "; if the meter says something else, make another plan.";
      case EXPOSE ->
          "Expose frame by frame by the table; frames that stay blank are released with the lens"
              + " capped. Meter again after each piece and write down what it says: a third of a"
              + " stop is log H 0.10.";
      case REWIND ->
          "Rewind wholly. Write on the cassette: test roll, to be cut before it is developed.";
      case CUT ->
          "Have at hand three light-tight boxes, numbered, and scissors with blunt ends. Lay the tip"
              + " of the leader at the edge of the table; cut at the stop at L + "
              + plain(gauge.fromFirstFrameMm().get(0))
              + " mm: piece 1. From the new end cut at "
              + plain(gauge.cutToCutMm())
              + " mm: piece 2. Cut the rest off its spool: piece 3. Into the end that was cut last"
              + " of each make as many nicks as its number.";
      case DEVELOP_1, DEVELOP_2, DEVELOP_3 -> develop(step.piece());
      case READ_1, READ_2, READ_3 ->
          "Piece "
              + step.piece()
              + ": the densest frame is +"
              + RollPlan.MOST
              + "; count back from it by "
              + plain(gauge.pitchMm())
              + " mm, for the thinnest are hardly seen. Read the middle of each of the nine and of"
              + " the blank before them, then all once more.";
      case RESULT ->
          "Each piece gives a characteristic curve; the three together contrast against time, and"
              + " from that the time for your aim. Once you believe it, one step puts it among your"
              + " times, as measured.";
    };
  }

  /** What the result will be worth. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (plan.times().shortest().compareTo(UNEVEN_UNDER) < 0) {
      notes.add(
          "The shortest time is under 5 minutes: a tank inverted by hand may develop unevenly (common"
              + " practice). A weaker dilution makes all three longer.");
    }
    notes.add(
        "With a scanner or camera as densitometer no more is claimed than ±0.03 of net density below"
            + " 1.5 and ±0.1 log H of speed, a third of a stop (judged from SE-S21, SE-S22, SE-S23).");
    notes.add(
        "Meter, lens and shutter are in the result and not in that figure: it is an exposure index of"
            + " this film in this camera, never an ISO speed.");
    notes.add(
        "Nine steps are too few for a computed band. Three times show contrast between the shortest"
            + " and the longest, and nothing beyond.");
    return notes;
  }

  private String develop(int number) {
    TestRollView.TestPieceView piece = pieces.get(number - 1);
    return "Piece "
        + number
        + ", with "
        + (piece.nicks() == 1 ? "one nick" : piece.nicks() + " nicks")
        + ": "
        + piece.develop()
        + ". "
        + (number == 1 ? SAME : "All else as for piece 1.")
        + (number == 3 ? "" : " The pieces not yet developed stay in their boxes.");
  }

  private static String plain(double value) {
    String text = String.valueOf(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
