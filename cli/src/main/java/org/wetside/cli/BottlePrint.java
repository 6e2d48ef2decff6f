package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.shelf.BottleView;
import org.wetside.web.shelf.VerdictView;
import org.wetside.web.shelf.WorkView;

/** A bottle in plain text. */
final class BottlePrint {
  private final PrintWriter out;

  BottlePrint(PrintWriter out) {
    this.out = out;
  }

  /** One line, and the gravest reason of its verdict. */
  void brief(BottleView bottle) {
    out.println(
        bottle.letter()
            + "  "
            + bottle.contents()
            + ", "
            + bottle.role()
            + "  "
            + Metric.volume(bottle.leftMl())
            + " of "
            + Metric.volume(bottle.fullMl())
            + (bottle.mixedOn() == null ? "" : "  mixed " + bottle.mixedOn())
            + (bottle.openedOn() == null ? "" : "  opened " + bottle.openedOn())
            + (bottle.owner().isEmpty() ? "" : "  of " + bottle.owner()));
    out.println(
        "   " + bottle.verdict().verdict() + ": " + words(bottle.verdict().reasons().get(0)));
  }

  /** All that is known of it. */
  void whole(BottleView bottle) {
    brief(bottle);
    bottle.verdict().reasons().stream()
        .skip(1)
        .forEach(reason -> out.println("      " + reason.verdict() + ": " + words(reason)));
    work(bottle.work());
    bottle.book().forEach(this::line);
    if (bottle.olderLines() != null) {
      out.println("   earlier lines: --before " + bottle.olderLines());
    }
    for (CautionView caution : bottle.cautions()) {
      out.println("Caution: " + caution.text());
    }
  }

  private static String words(VerdictView.ReasonView reason) {
    return reason.words() + " [" + reason.standing() + ", " + reason.source() + "]";
  }

  private void work(WorkView work) {
    for (WorkView.FilmView film : work.films()) {
      out.println(
          "   still does "
              + film.rolls()
              + " × "
              + film.film()
              + " ("
              + film.waiting()
              + " waiting)");
    }
    if (work.fixSeconds() != null && work.fixTimes() != null) {
      out.println(
          "   fix next for "
              + work.fixSeconds()
              + " s at 20 °C, "
              + plain(work.fixTimes())
              + " times the last clearing time");
    }
    if (!work.notComparable().isEmpty()) {
      out.println("   not comparable, make a baseline: " + String.join(", ", work.notComparable()));
    }
  }

  private void line(BottleView.LineView line) {
    out.println(
        "   "
            + line.at()
            + "  "
            + line.what()
            + String.format(Locale.ROOT, "  %+.0f mL", line.changeMl())
            + (line.rolls().isEmpty() ? "" : "  " + String.join(", ", line.rolls()))
            + (line.clearingSeconds() == null ? "" : "  " + plain(line.clearingSeconds()) + " s")
            + (line.note().isEmpty() ? "" : "  " + line.note()));
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.1f", value).replaceFirst("\\.0$", "");
  }
}
