package org.wetside.web.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.shelf.CareForBath;
import org.wetside.core.shelf.Replenishing;
import org.wetside.core.shelf.ReuseTable;

/**
 * How a developer that is used again is cared for.
 *
 * @param letter its bottle
 * @param replenisherMl replenisher in all, or null when no rate is known
 * @param replenisherSource where the rate stands, or null
 * @param replenisherStanding how it is known, or null
 * @param mostAtOnceMl the most that is added at once
 * @param mostAtOnceSource where that stands
 * @param parts one after the other; empty without a rate
 * @param tables makers' tables of times by roll number
 */
public record CareView(
    String letter,
    @Nullable Double replenisherMl,
    @Nullable String replenisherSource,
    @Nullable String replenisherStanding,
    double mostAtOnceMl,
    String mostAtOnceSource,
    List<PartView> parts,
    List<TableView> tables) {
  /**
   * One part of replenishing.
   *
   * @param outMl taken out into a jug
   * @param addMl replenisher added
   * @param backMl returned from the jug, to the mark
   * @param wasteMl what stays in the jug for good
   */
  public record PartView(double outMl, double addMl, double backMl, double wasteMl) {
    static PartView of(Replenishing.Part part) {
      return new PartView(
          part.out().millilitres(),
          part.add().millilitres(),
          part.back().millilitres(),
          part.waste().millilitres());
    }
  }

  /**
   * A maker's table.
   *
   * @param film the film it is for
   * @param format as printed
   * @param volumeMl volume of its bath
   * @param nextRoll which roll comes next, counted for that volume
   * @param nextSeconds its time, or null when the table has ended: the bath is spent
   * @param lastRoll the last roll it has a time for
   * @param source where it stands
   */
  public record TableView(
      String film,
      String format,
      double volumeMl,
      int nextRoll,
      @Nullable Long nextSeconds,
      int lastRoll,
      String source) {
    static TableView of(CareForBath.NextRoll next) {
      var first = next.table().steps().get(0);
      return new TableView(
          first.film(),
          first.format(),
          first.volume().millilitres(),
          next.answer().roll(),
          next.answer() instanceof ReuseTable.Known known ? (Long) known.time().toSeconds() : null,
          next.table().last(),
          first.citation().toString());
    }
  }

  /** The view of it. */
  public static CareView of(CareForBath.Answer answer) {
    return new CareView(
        answer.letter(),
        answer.plan().map(plan -> plan.total().millilitres()).orElse(null),
        answer.rate().map(rate -> rate.source()).orElse(null),
        answer.rate().map(rate -> rate.standing().word()).orElse(null),
        answer.mostAtOnce().millilitres(),
        answer.mostAtOnceSource(),
        answer
            .plan()
            .map(plan -> plan.parts().stream().map(PartView::of).toList())
            .orElse(List.of()),
        answer.tables().stream().map(TableView::of).toList());
  }
}
