package org.wetside.web.paper;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.CautionView;

/**
 * A label in the words and sizes it is printed in.
 *
 * @param label what is printed
 * @param strength what kind of solution and how much of it
 * @param mixed the day, or empty for a line to write on
 * @param opened the day, or empty for a line to write on
 * @param more batch and owner
 * @param cautions as many as there is room for
 * @param left how many cautions stand only on the bottle's page
 */
public record LabelFace(
    LabelView label,
    String strength,
    String mixed,
    String opened,
    String more,
    List<CautionView> cautions,
    int left) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

  /** Lines for cautions under the band. */
  private static final int LINES = 7;

  /** So many characters go into one of them. */
  private static final int LINE = 58;

  /** So many are taken by a source. */
  private static final int SOURCE = 20;

  private static final int LONG_NAME = 18;
  private static final int VERY_LONG_NAME = 34;

  /** Keeps an unmodifiable copy. */
  public LabelFace {
    cautions = List.copyOf(cautions);
  }

  static LabelFace of(LabelView label, Units units) {
    List<CautionView> shown = fitting(label.cautions());
    return new LabelFace(
        label,
        String.join(" ", label.role(), label.dilution()).strip()
            + ", "
            + units.words(Volume.ofMillilitres(label.fullMl())),
        day(label.mixedOn()),
        day(label.openedOn()),
        more(label),
        shown,
        label.cautions().size() - shown.size());
  }

  /** All when they fit; else the first of them, and a line that says how many more there are. */
  private static List<CautionView> fitting(List<CautionView> all) {
    List<CautionView> shown = new ArrayList<>();
    int room = all.stream().mapToInt(LabelFace::lines).sum() <= LINES ? LINES : LINES - 1;
    for (CautionView caution : all) {
      room -= lines(caution);
      if (room < 0 && !shown.isEmpty()) {
        break;
      }
      shown.add(caution);
    }
    return shown;
  }

  private static int lines(CautionView caution) {
    return (caution.text().length() + SOURCE + LINE - 1) / LINE;
  }

  private static String day(@Nullable String day) {
    return day == null ? "" : DAY.format(LocalDate.parse(day));
  }

  private static String more(LabelView label) {
    List<String> more = new ArrayList<>();
    if (!label.batch().isEmpty()) {
      more.add("batch " + label.batch());
    }
    if (!label.owner().isEmpty()) {
      more.add("of " + label.owner());
    }
    return String.join(", ", more);
  }

  /** How large the letter is: one, two or three characters as large as fits. */
  public String letterSize() {
    return "l" + label.letter().length();
  }

  /** How large the contents are. */
  public String nameSize() {
    int length = label.contents().length();
    return length > VERY_LONG_NAME ? "tiny" : length > LONG_NAME ? "small" : "large";
  }

  /** The address without the words every address begins with. */
  public String shortAddress() {
    return label.address().replaceFirst("^https?://", "");
  }
}
