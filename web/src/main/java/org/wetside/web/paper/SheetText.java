package org.wetside.web.paper;

import java.util.List;
import java.util.Locale;
import org.wetside.core.quantity.Units;

/** The run sheet as plain text, for a terminal or a plain printer. */
public final class SheetText {
  private static final int TICKS_A_LINE = 8;
  private static final String BOX = "[ ] ";

  private final PlainPage page = new PlainPage();

  private SheetText() {}

  /** The whole sheet, in those units. */
  public static String of(SheetView sheet, Units units) {
    SheetWords words = new SheetWords(sheet, units);
    SheetText paper = new SheetText();
    paper.head(sheet, words);
    paper.baths(sheet, words);
    paper.checks(sheet);
    paper.run(SheetRow.of(sheet, words, false));
    paper.page.heading("Readings and mishaps");
    paper.page.line("clock ________  °C ______  what happened ______________________________");
    paper.page.line("clock ________  °C ______  what happened ______________________________");
    paper.care(sheet.care());
    paper.page.line("");
    paper.page.wrapped("", words.foot());
    return paper.page.toString();
  }

  private void head(SheetView sheet, SheetWords words) {
    page.line(words.kind());
    page.line(words.title());
    page.wrapped("", words.recipe());
    page.line(words.day());
    page.line(
        (sheet.startKnown() ? "First pour " : "First pour assumed at ")
            + words.clock(sheet.startAt())
            + ", hangs "
            + words.clock(sheet.endAt()));
    page.wrapped("", words.clockNote());
    page.line(sheet.address());
    page.heading("In the tank, from the top");
    for (SheetView.SheetRoll roll : sheet.rolls()) {
      page.line(BOX + roll.number() + "  " + roll.film() + ", " + roll.place());
    }
  }

  private void baths(SheetView sheet, SheetWords words) {
    page.heading("In hand before the first pour");
    for (SheetView.SheetBath bath : sheet.baths()) {
      page.wrapped(
          BOX + PlainPage.padded(bath.bottle() == null ? "" : bath.bottle(), 4),
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
      page.heading("Before the first pour");
      sheet.checks().forEach(check -> page.wrapped(BOX, check.text()));
    }
  }

  private void run(List<SheetRow> rows) {
    page.heading("The run");
    page.line(
        PlainPage.padded("clock", 10)
            + PlainPage.padded("from start", 12)
            + PlainPage.padded("bottle", 8)
            + "do");
    for (SheetRow row : rows) {
      page.wrapped(
          PlainPage.padded(row.clock(), 10)
              + PlainPage.padded(row.fromStart(), 12)
              + PlainPage.padded(row.bottle(), 8)
              + BOX,
          row.act() + row.more());
      if (!row.then().isEmpty()) {
        page.wrapped(" ".repeat(34), row.then());
      }
      for (int i = 0; i < row.ticks().size(); i += TICKS_A_LINE) {
        List<String> some = row.ticks().subList(i, Math.min(i + TICKS_A_LINE, row.ticks().size()));
        page.line("      " + String.join(" ", some.stream().map(one -> "[ ]" + one).toList()));
      }
    }
  }

  private void care(List<SheetView.SheetCare> care) {
    page.heading("Care");
    int number = 0;
    for (SheetView.SheetCare one : care) {
      number++;
      String baths = String.join(", ", one.baths());
      page.wrapped(
          PlainPage.padded(number + ".", 4),
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
}
