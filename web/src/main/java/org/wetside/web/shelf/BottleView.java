package org.wetside.web.shelf;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.bath.Bottle;
import org.wetside.core.bath.BottleEntry;
import org.wetside.core.bath.BottleLabel;
import org.wetside.reference.Cautions;
import org.wetside.reference.Disposal;
import org.wetside.web.mixing.CautionView;

/**
 * A bottle as JSON.
 *
 * @param letter its own
 * @param contents name of what is in it
 * @param strength concentrate, stock or working
 * @param bath what it does to film
 * @param fullMl what it holds
 * @param leftMl what is in it, the sum of its book
 * @param oneShot whether what is taken out is thrown away after use
 * @param mixedOn day, or null
 * @param openedOn day, or null
 * @param note may be empty
 * @param filmRolls film that went through it, in rolls of 80 in²
 * @param lastTouchedAt moment of the last line of its book
 * @param cautions for handling it; never empty
 * @param disposal where what is in it goes
 * @param book every line, the oldest first; only where one bottle is asked for
 */
public record BottleView(
    String letter,
    String contents,
    String strength,
    String bath,
    double fullMl,
    double leftMl,
    boolean oneShot,
    @Nullable String mixedOn,
    @Nullable String openedOn,
    String note,
    double filmRolls,
    String lastTouchedAt,
    List<CautionView> cautions,
    List<CautionView> disposal,
    List<LineView> book) {

  /**
   * One line of the book.
   *
   * @param at when it happened
   * @param what filled, opened, taken out, poured back, topped up, corrected or discarded
   * @param changeMl how much more is in it after that; negative for less
   * @param filmRolls film that went through it then, in rolls of 80 in²
   * @param run the run it belongs to; empty when it was done by hand
   * @param note in words; may be empty
   */
  public record LineView(
      String at, String what, double changeMl, double filmRolls, String run, String note) {
    static LineView of(BottleEntry entry) {
      return new LineView(
          entry.at().toString(),
          entry.kind().word(),
          entry.changeMillilitres(),
          entry.film().rolls(),
          entry.run(),
          entry.note());
    }
  }

  /** The view of a bottle among others. */
  public static BottleView of(Bottle bottle) {
    return of(bottle, List.of());
  }

  /** The view of a bottle with its book. */
  public static BottleView of(Bottle bottle, List<BottleEntry> book) {
    BottleLabel label = bottle.label();
    return new BottleView(
        label.letter(),
        label.contents(),
        label.strength().word(),
        label.bath().word(),
        label.full().millilitres(),
        bottle.left().millilitres(),
        label.oneShot(),
        label.mixedOn().map(LocalDate::toString).orElse(null),
        label.openedOn().map(LocalDate::toString).orElse(null),
        label.note(),
        bottle.film().rolls(),
        bottle.lastTouched().toString(),
        Cautions.open().whenHandling(label.contents(), label.bath()).stream()
            .map(CautionView::of)
            .toList(),
        Disposal.open().of(label.bath()).stream().map(CautionView::of).toList(),
        book.stream().map(LineView::of).toList());
  }
}
