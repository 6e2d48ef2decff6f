package org.wetside.web.shelf;

import java.util.List;
import org.wetside.core.shelf.RecalledRoll;

/**
 * The rolls that are to be fixed again.
 *
 * @param rolls the first fixed first
 */
public record RecallView(List<RollView> rolls) {
  /**
   * One of them.
   *
   * @param roll its number; empty when the ledger did not name it
   * @param film what it is
   * @param title what it is called; may be empty
   * @param sleeve where the negatives are; may be empty
   * @param owner whose they are; may be empty
   * @param bottle letter of the bottle that failed
   * @param contents what that held
   * @param run the run; may be empty
   * @param fixedAt when
   */
  public record RollView(
      String roll,
      String film,
      String title,
      String sleeve,
      String owner,
      String bottle,
      String contents,
      String run,
      String fixedAt) {
    static RollView of(RecalledRoll roll) {
      return new RollView(
          roll.roll(),
          roll.film(),
          roll.title(),
          roll.sleeve(),
          roll.owner(),
          roll.bottle(),
          roll.contents(),
          roll.run(),
          roll.fixedAt().toString());
    }
  }

  /** The view of a recall list. */
  public static RecallView of(List<RecalledRoll> rolls) {
    return new RecallView(rolls.stream().map(RollView::of).toList());
  }
}
