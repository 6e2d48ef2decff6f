package org.wetside.app.process;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;

/**
 * A process as a plain text that is read and written by people: {@code word: value} lines, first
 * the process, then each step, which begins with {@code step: developer}. Empty lines and lines
 * that begin with {@code #} are skipped.
 */
public final class ProcessText {
  private static final String PROCESS = "process";
  private static final String NAME = "name";
  private static final String ABOUT = "about";
  private static final String STEP = "step";

  private ProcessText() {}

  /** The text of a process; reads back by {@link #parse}. */
  public static String of(FilmProcess process) {
    StringBuilder text = new StringBuilder();
    line(text, PROCESS, process.slug());
    line(text, NAME, process.name());
    line(text, ABOUT, process.about());
    for (StepDraft step : ProcessDraft.of(process).steps()) {
      text.append('\n');
      line(text, STEP, step.value(StepField.KIND));
      for (StepField field : StepField.values()) {
        boolean open = field == StepField.TIME && step.value(field).isEmpty();
        if (field != StepField.KIND) {
          line(text, field.word(), open ? "from the load" : step.value(field));
        }
      }
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String word, String value) {
    if (!value.isEmpty()) {
      text.append(word).append(": ").append(value.replaceAll("\\s+", " ")).append('\n');
    }
  }

  /**
   * Reads such a text.
   *
   * @throws BadValueException naming the line that cannot be understood
   */
  public static ProcessDraft parse(String text) {
    Map<String, String> head = new HashMap<>();
    List<Map<StepField, String>> steps = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String stripped = line.replace("\uFEFF", "").strip();
      int colon = stripped.indexOf(':');
      if (stripped.isEmpty() || stripped.startsWith("#")) {
        continue;
      }
      if (colon < 0) {
        throw refused(number, stripped, "write a word, a colon and a value, as time: 9:00");
      }
      String word = stripped.substring(0, colon).strip();
      String value = stripped.substring(colon + 1).strip();
      if (word.equals(STEP)) {
        steps.add(new EnumMap<>(Map.of(StepField.KIND, value)));
      } else if (steps.isEmpty()) {
        putHead(head, number, stripped, word, value);
      } else {
        putField(steps.get(steps.size() - 1), number, stripped, word, value);
      }
    }
    return new ProcessDraft(
        head.getOrDefault(PROCESS, ""),
        head.getOrDefault(NAME, ""),
        head.getOrDefault(ABOUT, ""),
        steps.stream().map(StepDraft::new).toList());
  }

  private static void putHead(
      Map<String, String> head, int number, String line, String word, String value) {
    if (!List.of(PROCESS, NAME, ABOUT).contains(word)) {
      throw refused(number, line, "process, name and about come first, then step: developer");
    }
    if (head.put(word, value) != null) {
      throw refused(number, line, word + " is said twice");
    }
  }

  private static void putField(
      Map<StepField, String> step, int number, String line, String word, String value) {
    Optional<StepField> field = StepField.of(word).filter(known -> known != StepField.KIND);
    if (field.isEmpty()) {
      throw refused(number, line, "a step has " + fields());
    }
    if (step.put(field.get(), value) != null) {
      throw refused(number, line, word + " is said twice in one step");
    }
  }

  private static String fields() {
    List<String> words = new ArrayList<>();
    for (StepField field : StepField.values()) {
      if (field != StepField.KIND) {
        words.add(field.word());
      }
    }
    return String.join(", ", words);
  }

  private static BadValueException refused(int number, String line, String limit) {
    return new BadValueException("line " + number, line, limit);
  }
}
