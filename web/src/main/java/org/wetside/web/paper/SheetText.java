package org.wetside.web.paper;

import java.util.List;
import java.util.Locale;
import org.wetside.core.quantity.Units;

/** The run sheet as plain text, for a terminal or a plain printer. */
public final class SheetText {
  private static final int WIDTH = 78;
  private static final int TICKS_A_LINE = 8;
  private static final String BOX = "[ ] ";

  private final StringBuilder text = new StringBuilder();

  private SheetText() {}

  /** The whole sheet, in those units. */
  public static String of(SheetView sheet, Units units) {
    SheetWords words = new SheetWords(sheet, units);
    SheetText paper = new SheetText();
    paper.head(sheet, words);
    paper.baths(sheet, words);
    paper.checks(sheet);
    paper.run(SheetRow.of(sheet, words, false));
    paper.heading("Readings and mishaps");
    paper.line("clock ________  °C ______  what happened ______________________________");
    paper.line("clock ________  °C ______  what happened ______________________________");
    paper.care(sheet.care());
    paper.line("");
    paper.wrapped("", words.foot());
    return paper.text.toString();
  }

  private void head(SheetView sheet, SheetWords words) {
    line(words.kind());
    line(words.title());
    wrapped("", words.recipe());
    line(words.day());
    line(
        (sheet.startKnown() ? "First pour " : "First pour assumed at ")
            + words.clock(sheet.startAt())
            + ", hangs "
            + words.clock(sheet.endAt()));
    wrapped("", words.clockNote());
    line(sheet.address());
    heading("In the tank, from the top");
    for (SheetView.SheetRoll roll : sheet.rolls()) {
      line(BOX + roll.number() + "  " + roll.film() + ", " + roll.place());
    }
  }

  private void baths(SheetView sheet, SheetWords words) {
    heading("In hand before the first pour");
    for (SheetView.SheetBath bath : sheet.baths()) {
      wrapped(
          BOX + padded(bath.bottle() == null ? "" : bath.bottle(), 4),
          words.made(bath)
              + "; "
              + words.volume(bath)
              + ", "
              + words.band(bath.lowC(), bath.highC())
              + "; read ______"
              + (words.care(bath).isEmpty() ? "" : "; " + words.care(bath)));
    }
  }

  private void checks(SheetView sheet) {
    if (!sheet.checks().isEmpty()) {
      heading("Before the first pour");
      sheet.checks().forEach(check -> wrapped(BOX, check.text()));
    }
  }

  private void run(List<SheetRow> rows) {
    heading("The run");
    line(padded("clock", 10) + padded("from start", 12) + padded("bottle", 8) + "do");
    for (SheetRow row : rows) {
      wrapped(
          padded(row.clock(), 10) + padded(row.fromStart(), 12) + padded(row.bottle(), 8) + BOX,
          row.act() + row.more());
      if (!row.then().isEmpty()) {
        wrapped(" ".repeat(34), row.then());
      }
      for (int i = 0; i < row.ticks().size(); i += TICKS_A_LINE) {
        List<String> some = row.ticks().subList(i, Math.min(i + TICKS_A_LINE, row.ticks().size()));
        line("      " + String.join(" ", some.stream().map(one -> "[ ]" + one).toList()));
      }
    }
  }

  private void care(List<SheetView.SheetCare> care) {
    heading("Care");
    int number = 0;
    for (SheetView.SheetCare one : care) {
      number++;
      String baths = String.join(", ", one.baths());
      wrapped(
          padded(number + ".", 4),
          baths.substring(0, 1).toUpperCase(Locale.ROOT)
              + baths.substring(1)
              + ": "
              + one.text()
              + " ("
              + one.source()
              + ", "
              + one.standing()
              + ")");
    }
  }

  private void heading(String words) {
    line("");
    line(words);
    line("-".repeat(words.length()));
  }

  private void line(String words) {
    text.append(words.stripTrailing()).append('\n');
  }

  /** Broken at spaces; what follows stands under the first word. */
  private void wrapped(String before, String words) {
    StringBuilder line = new StringBuilder(before);
    boolean fresh = true;
    for (String word : words.split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(" ".repeat(before.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(line.toString());
  }

  private static String padded(String words, int width) {
    return words + " ".repeat(Math.max(1, width - words.length()));
  }
}
