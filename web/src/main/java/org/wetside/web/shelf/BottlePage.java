package org.wetside.web.shelf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.shelf.LedgerPage;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one bottle: what is in it, the cautions for handling it, its acts and its
 * book.
 *
 * @param sheet the sheet
 * @param bottle the bottle
 * @param opened whether it has been opened
 * @param decide what a mishap wrote on it that is to be decided; may be empty
 * @param cautions shown at the moment of handling; never empty
 * @param disposal where its contents go
 * @param book its lines, newest first
 * @param older what earlier lines are asked for by; empty when there are none
 * @param fixers the pair of fixers it is one of, and what comes next; may be empty
 * @param fixing how long to fix next; empty without a clearing time, and for what does not fix
 * @param at the temperature asked for, as it was typed
 * @param cared whether it is replenished or has times by roll number
 * @param form what was typed into one of its acts
 */
public record BottlePage(
    Sheet sheet,
    BottleLine bottle,
    boolean opened,
    DecideView decide,
    List<CautionView> cautions,
    List<CautionView> disposal,
    List<Line> book,
    String older,
    String fixers,
    Optional<FixingView> fixing,
    FilledForm at,
    boolean cared,
    FilledForm form) {

  /** Whether it is a fixer, whose clearing times are compared. */
  public boolean fixes() {
    return bottle.bath().equals(BathKind.FIXER.word())
        || bottle.bath().equals(BathKind.BLEACH_FIX.word());
  }

  /** Whether a test done elsewhere was typed and refused, so that its fields stand open. */
  public boolean elsewhereOpen() {
    return form.isRefused() && form.values().containsKey("test");
  }

  /** Whether a clip is the one that later ones are compared with. */
  public Map<String, String> freshness() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("used", "used");
    words.put("fresh", "fresh: later clips are compared with this one");
    return words;
  }

  /** The tests to choose from, that of its kind of bath first. */
  public Map<String, String> tests() {
    boolean develops = bottle.bath().equals(BathKind.DEVELOPER.word());
    Map<String, String> tests = new LinkedHashMap<>();
    for (BathTest test :
        develops
            ? List.of(BathTest.LEADER, BathTest.CLIP, BathTest.IODIDE)
            : List.of(BathTest.CLIP, BathTest.IODIDE, BathTest.LEADER)) {
      tests.put(test.word(), test.word());
    }
    return tests;
  }

  /**
   * One line of the book.
   *
   * @param when day and time
   * @param what what happened
   * @param change how much more or less, signed
   * @param note in words
   */
  public record Line(String when, String what, String change, String note) {
    static Line of(LedgerPage.Entry entry, String when, Units units) {
      double change = entry.changeMillilitres();
      String signed =
          change == 0
              ? ""
              : (change > 0 ? "+" : "−") + units.words(Volume.ofMillilitres(Math.abs(change)));
      return new Line(when, BookWords.line(entry.line().what()), signed, entry.line().note());
    }
  }
}
