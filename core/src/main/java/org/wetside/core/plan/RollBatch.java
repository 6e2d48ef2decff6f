package org.wetside.core.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.wetside.core.quantity.BadValueException;

/** Many rolls pasted at once, one a line: either every line is good, or none is taken. */
public sealed interface RollBatch permits RollBatch.Good, RollBatch.Refused {
  /** Every line describes a roll. */
  record Good(List<RollDraft> drafts) implements RollBatch {
    public Good {
      drafts = List.copyOf(drafts);
    }
  }

  /** Some lines do not; nothing is taken. */
  record Refused(List<BadLine> lines) implements RollBatch {
    public Refused {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line that is no roll.
   *
   * @param number from 1, as an editor counts
   * @param text as typed
   * @param reason what is wrong and what would be right
   */
  record BadLine(int number, String text, String reason) {}

  /**
   * Reads pasted text. Empty lines and lines that begin with {@code #} are skipped.
   *
   * @param taken numbers that exist, for the message
   */
  static RollBatch parse(String text, Set<String> taken) {
    List<RollDraft> drafts = new ArrayList<>();
    List<BadLine> bad = new ArrayList<>();
    Set<String> numbers = new HashSet<>();
    taken.forEach(number -> numbers.add(number.toLowerCase(Locale.ROOT)));
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      try {
        RollDraft draft = RollLine.parse(line);
        draft
            .number()
            .filter(number -> !numbers.add(number.toLowerCase(Locale.ROOT)))
            .ifPresent(
                number -> {
                  throw new BadValueException(
                      "roll number", number, "there is already a roll of that number");
                });
        drafts.add(draft);
      } catch (BadValueException wrong) {
        bad.add(new BadLine(i + 1, line, String.valueOf(wrong.getMessage())));
      }
    }
    return bad.isEmpty() ? new Good(drafts) : new Refused(bad);
  }
}
