package org.wetside.web.strip;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.app.curves.ReadFamily;
import org.wetside.core.strip.FilmStrip;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of several strips read together.
 *
 * @param sheet the sheet
 * @param form the aim as it was typed
 * @param strips numbers that were chosen
 * @param answer what they show; null when nothing was chosen or it was refused
 * @param drawings of it; null likewise
 * @param rows the curves; empty likewise
 * @param times for N − 2 to N + 2; empty likewise
 */
public record FamilyPage(
    Sheet sheet,
    FilledForm form,
    List<Long> strips,
    @Nullable FamilyAnswer answer,
    @Nullable FamilyDrawings drawings,
    List<FamilyRow> rows,
    List<TimeRow> times) {
  /** The film and how it was developed; asked only where there is an answer. */
  public FilmStrip first() {
    if (answer == null) {
      throw new IllegalStateException("nothing was read together");
    }
    return answer.members().get(0).kept().strip();
  }

  /** Film and developer. */
  public String name() {
    return StripText.kind(first());
  }

  /** The time for N. */
  public TimeRow normal() {
    return times.stream().filter(time -> time.n() == 0).findFirst().orElseThrow();
  }

  /** In which measure contrast is. */
  public String measure() {
    return answer == null ? "contrast" : answer.aim().measure().words();
  }

  /** Whether an exponential goes through contrast against time. */
  public String description() {
    return answer == null
        ? ""
        : answer
            .description()
            .map(FamilyText::description)
            .orElse(
                "Contrast is determinable at fewer than two times: there is nothing to read"
                    + " between.");
  }

  /** Between which contrasts anything is read. */
  public String reach() {
    if (answer == null || answer.contrast().isEmpty()) {
      return "nothing";
    }
    double least =
        answer.contrast().stream().mapToDouble(point -> point.contrast()).min().orElseThrow();
    double most =
        answer.contrast().stream().mapToDouble(point -> point.contrast()).max().orElseThrow();
    return Digits.two(least) + " to " + Digits.two(most);
  }

  /** The measures to choose from. */
  public Map<String, String> measures() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("contrast-index", "contrast index");
    words.put("average-gradient", "average gradient");
    return words;
  }

  /** The draws of the bands were made with it. */
  public long seed() {
    return ReadFamily.SEED;
  }
}
