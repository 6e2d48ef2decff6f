package org.wetside.web.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.quantity.BadValueException;

/**
 * Bottles.
 *
 * @param bottles by letter
 */
public record BottlesView(List<BottleView> bottles) {
  /** How many lines of a book are shown at once. */
  static final int LINES = 100;

  /** All that stand on the shelf of a home. */
  public static BottlesView of(Wetside wetside) {
    return new BottlesView(wetside.judgeBottles().all().stream().map(BottleView::of).toList());
  }

  /**
   * One with the newest part of its book, as a list of one; the last of that letter where none
   * stands on the shelf any more.
   *
   * @throws BadValueException when there never was one
   */
  public static BottlesView one(Wetside wetside, String letter) {
    return one(wetside, letter, Optional.empty());
  }

  /**
   * The same with an earlier part of its book.
   *
   * @param before a number that {@code olderLines} gave; empty for the newest lines
   * @throws BadValueException when there never was one
   */
  public static BottlesView one(Wetside wetside, String letter, Optional<Long> before) {
    JudgedBottle judged =
        wetside
            .judgeBottles()
            .find(letter)
            .orElseThrow(() -> new BadValueException("bottle", letter, "none stands on the shelf"));
    return new BottlesView(List.of(with(wetside, judged, before)));
  }

  /** A bottle with a part of its book. */
  static BottleView with(Wetside wetside, JudgedBottle judged, Optional<Long> before) {
    String letter = judged.bottle().label().letter();
    return BottleView.of(judged, wetside.listBottles().page(letter, before, LINES));
  }
}
