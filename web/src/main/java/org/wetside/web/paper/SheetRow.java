package org.wetside.web.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One line of the run, with its box.
 *
 * @param clock by the clock
 * @param fromStart from the first pour
 * @param bottle letter; may be empty
 * @param act what is done, in heavy type
 * @param more what is to be known of it
 * @param then what follows
 * @param ticks moments of agitation, each with its own box
 */
public record SheetRow(
    String clock,
    String fromStart,
    String bottle,
    String act,
    String more,
    String then,
    List<String> ticks) {
  /** More boxes than anybody would tick; then the words alone say how often. */
  private static final int MOST_TICKS = 48;

  /** Keeps an unmodifiable copy. */
  public SheetRow {
    ticks = List.copyOf(ticks);
  }

  /**
   * The lines of a run.
   *
   * @param brief whether only developers get a line of their own for the drain
   */
  static List<SheetRow> of(SheetView sheet, SheetWords words, boolean brief) {
    List<SheetRow> rows = new ArrayList<>();
    for (int i = 0; i < sheet.steps().size(); i++) {
      SheetView.SheetStep step = sheet.steps().get(i);
      boolean last = i + 1 == sheet.steps().size();
      boolean lidComesOff = step.dark() && !last && !sheet.steps().get(i + 1).dark();
      boolean drainApart = step.wet() && (step.developing() || (step.dark() && !brief));
      rows.add(pour(step, words, drainApart, lidComesOff));
      if (drainApart) {
        rows.add(drain(step, words, lidComesOff));
      }
    }
    rows.add(
        new SheetRow(
            words.clock(sheet.endAt()),
            words.fromStart(sheet.endAt()),
            "",
            "Hang",
            " "
                + sheet.rolls().stream()
                    .map(SheetView.SheetRoll::number)
                    .collect(Collectors.joining(", ")),
            "",
            List.of()));
    return rows;
  }

  private static SheetRow pour(
      SheetView.SheetStep step, SheetWords words, boolean drainApart, boolean lidComesOff) {
    String letter = step.bottle() == null ? "" : step.bottle();
    List<String> then = new ArrayList<>();
    if (step.wet()) {
      if (!step.agitation().equals("none")) {
        then.add(step.agitation());
      } else if (step.bottle() != null) {
        then.add("no agitation");
      }
      if (!drainApart) {
        then.add(
            "drain "
                + words.clock(step.drainAt())
                + ", "
                + SheetWords.afterUse(step.afterUse())
                + (lidComesOff ? "; the lid may come off" : ""));
      }
    }
    String act = step.wet() ? step.word() + " in" : "Light on the film";
    String more =
        (step.wet() ? ", " + SheetWords.length(step.pourInSeconds()) + ", then " : ", ")
            + SheetWords.length(step.seconds())
            + (step.dark() ? ". Cap only" : "");
    boolean tickedEach = step.developing() && step.bouts().size() <= MOST_TICKS;
    return new SheetRow(
        words.clock(step.beginAt()),
        words.fromStart(step.beginAt()),
        letter,
        act,
        more,
        String.join("; ", then),
        tickedEach ? step.bouts().stream().map(words::within).toList() : List.of());
  }

  private static SheetRow drain(SheetView.SheetStep step, SheetWords words, boolean lidComesOff) {
    return new SheetRow(
        words.clock(step.drainAt()),
        words.fromStart(step.drainAt()),
        step.afterUse().equals("discard") || step.bottle() == null ? "" : step.bottle(),
        "Drain",
        ", " + SheetWords.afterUse(step.afterUse()),
        step.developing()
            ? "moved to ____________"
            : lidComesOff ? "then the lid may come off" : "",
        List.of());
  }
}
