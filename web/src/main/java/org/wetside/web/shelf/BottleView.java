package org.wetside.web.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.app.shelf.LedgerPage;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.reference.Cautions;
import org.wetside.reference.Disposal;
import org.wetside.web.mixing.CautionView;

/**
 * A bottle as JSON.
 *
 * @param letter its own
 * @param contents name of what is in it
 * @param role concentrate, stock, working, replenisher or waste
 * @param bath what it does to film
 * @param fullMl what it holds
 * @param leftMl what is in it, the sum of its book
 * @param oneShot whether what is taken out is thrown away after use
 * @param mixedOn day, or null
 * @param openedOn day, or null
 * @param note may be empty
 * @param dilution how a working solution was made; may be empty
 * @param use one-shot, reused or replenished
 * @param storage how it is kept
 * @param batch which batch it comes from; may be empty
 * @param owner whose it is; may be empty
 * @param discarded whether it is off the shelf
 * @param verdict whether to use it, and why
 * @param work what it has done and can still do
 * @param lastTouchedAt moment of the last line of its book
 * @param cautions for handling it; never empty
 * @param disposal where what is in it goes
 * @param book its last lines, the oldest of them first; only where one bottle is asked for
 * @param olderLines what to ask for earlier lines with (query {@code before}), or null
 */
public record BottleView(
    String letter,
    String contents,
    String role,
    String bath,
    double fullMl,
    double leftMl,
    boolean oneShot,
    @Nullable String mixedOn,
    @Nullable String openedOn,
    String note,
    String dilution,
    String use,
    String storage,
    String batch,
    String owner,
    boolean discarded,
    VerdictView verdict,
    WorkView work,
    String lastTouchedAt,
    List<CautionView> cautions,
    List<CautionView> disposal,
    List<LineView> book,
    @Nullable Long olderLines) {

  /**
   * One line of the book.
   *
   * @param at when it happened
   * @param what what happened, such as used, taken out, topped up or clip test passed
   * @param changeMl how much more is in it after that; negative for less
   * @param leftMl what was in it then
   * @param filmRolls film that went through it then, in rolls of 80 in²
   * @param rolls numbers of the rolls, where they are known
   * @param clearingSeconds how long a clip took to clear, or null
   * @param run the run it belongs to; empty when it was done by hand
   * @param note in words; may be empty
   */
  public record LineView(
      String at,
      String what,
      double changeMl,
      double leftMl,
      double filmRolls,
      List<String> rolls,
      @Nullable Double clearingSeconds,
      String run,
      String note) {
    static LineView of(LedgerPage.Entry entry) {
      LedgerLine line = entry.line();
      List<FilmUse> film = BookWords.film(line.what());
      return new LineView(
          line.at().toString(),
          line.what().word(),
          entry.changeMillilitres(),
          entry.left().millilitres(),
          film.stream().mapToDouble(use -> use.amount().rolls()).sum(),
          film.stream().map(FilmUse::roll).filter(roll -> !roll.isEmpty()).toList(),
          BookWords.clearing(line.what()).map(Clearing::seconds).orElse(null),
          line.run(),
          line.note());
    }
  }

  /** The view of a bottle among others. */
  public static BottleView of(JudgedBottle judged) {
    return of(judged, new LedgerPage(List.of(), Optional.empty()));
  }

  /** The view of a bottle with a part of its book. */
  public static BottleView of(JudgedBottle judged, LedgerPage page) {
    Bottle bottle = judged.bottle();
    BottleLabel label = bottle.label();
    return new BottleView(
        label.letter(),
        label.contents(),
        label.role().word(),
        label.bath().word(),
        label.full().millilitres(),
        bottle.left().millilitres(),
        label.oneShot(),
        label.mixedOn().map(LocalDate::toString).orElse(null),
        label.openedOn().map(LocalDate::toString).orElse(null),
        label.note(),
        label.dilution(),
        label.use().word(),
        label.storage().word(),
        label.batch(),
        label.owner(),
        bottle.discarded(),
        VerdictView.of(judged.verdict()),
        WorkView.of(judged),
        bottle.lastTouched().toString(),
        Cautions.open().whenHandling(label.contents(), label.bath()).stream()
            .map(CautionView::of)
            .toList(),
        Disposal.open().of(label.bath()).stream().map(CautionView::of).toList(),
        oldestFirst(page),
        page.older().orElse(null));
  }

  private static List<LineView> oldestFirst(LedgerPage page) {
    List<LineView> lines = new ArrayList<>(page.entries().stream().map(LineView::of).toList());
    Collections.reverse(lines);
    return List.copyOf(lines);
  }
}
