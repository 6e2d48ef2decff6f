package org.wetside.web.times;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the Times page.
 *
 * @param sheet the sheet
 * @param ask the question as typed
 * @param answer the answer; null when there is none
 * @param none why there is no honest time; null when that is not so
 * @param line the one line from a leaflet
 * @param grid the table of a leaflet
 * @param file what is wrong with a file that was refused
 * @param own the user's own times
 */
public record TimesPage(
    Sheet sheet,
    FilledForm ask,
    @Nullable AnswerPart answer,
    @Nullable NoTimePart none,
    FilledForm line,
    LeafletGrid grid,
    List<String> file,
    List<OwnTimeView> own) {
  private static final Map<String, String> VESSELS =
      words("small", "small tank", "large", "large tank", "rotary", "rotary tube", "tray", "tray");
  private static final Map<String, String> FORMATS =
      words("", "any", "135", "135", "120", "120", "sheet", "sheet");
  private static final Map<String, String> WAYS =
      words(
          "",
          "as usual",
          "ordinary",
          "ordinary",
          "continuous",
          "continuous",
          "stand",
          "stand",
          "semi-stand",
          "semi-stand",
          "two-bath",
          "two-bath",
          "monobath",
          "monobath");

  private static Map<String, String> words(String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return words;
  }

  /** Tanks to choose from. */
  public Map<String, String> vessels() {
    return VESSELS;
  }

  /** Formats to choose from. */
  public Map<String, String> formats() {
    return FORMATS;
  }

  /** Ways of agitating to choose from. */
  public Map<String, String> ways() {
    return WAYS;
  }

  /** What a leaflet's rows may differ in. */
  public Map<String, String> downs() {
    return words("dilutions", "dilutions down", "indexes", "exposure indexes down");
  }

  /** Whether anything was asked. */
  public boolean isAsked() {
    return !ask.isBlank("film") || !ask.isBlank("developer");
  }

  /** What is wrong with the question, in one sentence. */
  public String confusion() {
    return ask.messages().values().stream().findFirst().orElse("");
  }

  /** The same question on the command line. */
  public String command() {
    StringBuilder text = new StringBuilder("wetside time ");
    text.append(quoted(ask.value("film"))).append(' ').append(quoted(ask.value("developer")));
    for (String option : List.of("dilution", "ei", "temp", "vessel", "format", "agitation")) {
      if (!ask.isBlank(option)) {
        text.append(" --").append(option).append(' ').append(quoted(ask.value(option)));
      }
    }
    return text.toString();
  }

  private static String quoted(String text) {
    return text.matches("[\\w+.-]+") ? text : '"' + text.replace("\"", "") + '"';
  }
}
