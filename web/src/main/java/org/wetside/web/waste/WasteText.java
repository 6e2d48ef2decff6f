package org.wetside.web.waste;

import java.util.List;
import org.wetside.web.mixing.CautionView;

/** The label and the sheet of a jug as plain text. */
final class WasteText {
  private static final String LINE = "________________________";

  private WasteText() {}

  static String label(WastePaper paper) {
    JugView jug = paper.jug();
    StringBuilder text = new StringBuilder();
    text.append("WASTE, JUG ").append(jug.jug()).append('\n');
    text.append(jug.kind()).append(": ").append(jug.takes()).append('\n');
    text.append("holds ").append(paper.volume(jug.holdsMl())).append("\n\n");
    add(text, paper.neverTogether());
    text.append('\n').append(paper.rule()).append('\n');
    return text.toString();
  }

  static String handInSheet(WastePaper paper) {
    JugView jug = paper.jug();
    StringBuilder text = new StringBuilder();
    text.append("Waste to hand in, jug ").append(jug.jug()).append('\n');
    text.append(jug.kind()).append(" waste, ").append(paper.volume(jug.filledMl())).append('\n');
    text.append(jug.silverWords()).append("\n\nWhat was poured in\n");
    for (JugView.PouredView one : jug.inside()) {
      text.append("  ")
          .append(JugPage.day(one.at()))
          .append("  ")
          .append(paper.volume(one.volumeMl()))
          .append("  ")
          .append(one.what())
          .append(one.bath() == null ? "" : " (" + one.bath() + ")")
          .append('\n');
    }
    text.append("\nCautions\n");
    add(text, jug.cautions());
    text.append("\nWhere it goes\n");
    add(text, jug.disposal());
    text.append('\n').append(paper.rule()).append('\n');
    text.append("\nhanded in on ").append(LINE).append("\nto ").append(LINE).append('\n');
    text.append("received by ").append(LINE).append("\n\nPrinted ").append(paper.day());
    return text.append(".\n").toString();
  }

  private static void add(StringBuilder text, List<CautionView> cautions) {
    for (CautionView one : cautions) {
      text.append("  ")
          .append(one.text())
          .append(" (")
          .append(one.source())
          .append(", ")
          .append(one.standing())
          .append(")\n");
    }
  }
}
