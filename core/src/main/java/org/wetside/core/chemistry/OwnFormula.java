package org.wetside.core.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A formula the user wrote down.
 *
 * @param code short name, 1 to 30 characters with a letter or digit
 * @param name what it is called; the short name when empty
 * @param kind what it is for; {@code bath} when empty
 * @param source where it is printed; empty when it is recalled
 * @param note anything else; may be empty
 * @param lines in order of dissolving, at least one
 */
public record OwnFormula(
    String code, String name, String kind, String source, String note, List<FormulaLine> lines) {
  private static final int MOST_LINES = 30;

  /** Refuses what has no name or no lines. */
  public OwnFormula {
    code = code.strip();
    name = name.isBlank() ? code : name.strip();
    kind = kind.isBlank() ? "bath" : kind.strip();
    source = source.strip();
    note = note.strip();
    lines = List.copyOf(lines);
    boolean named = code.codePoints().anyMatch(Character::isLetterOrDigit);
    if (!named || code.length() > 30 || code.indexOf('/') >= 0) {
      throw new BadValueException(
          "formula name", code, "1 to 30 characters with a letter or digit, no /");
    }
    if (lines.isEmpty() || lines.size() > MOST_LINES) {
      throw new BadValueException(
          "lines of the formula", String.valueOf(lines.size()), "1 to " + MOST_LINES + " lines");
    }
  }

  /**
   * Reads lines as somebody types them; empty ones are skipped.
   *
   * @throws BadValueException naming the first line that is not understood
   */
  public static List<FormulaLine> lines(String text) {
    List<FormulaLine> lines = new ArrayList<>();
    for (String line : text.lines().toList()) {
      if (!line.isBlank()) {
        lines.add(FormulaLine.parse(line));
      }
    }
    return lines;
  }

  /** As a formula: published when it says where, else from memory. */
  public Formula asFormula(Substances substances) {
    Standing standing = source.isEmpty() ? Standing.FROM_MEMORY : Standing.PUBLISHED;
    Citation citation = Citation.of(source.isEmpty() ? "your own" : source);
    List<FormulaStep> steps = new ArrayList<>();
    for (FormulaLine line : lines) {
      FormulaStep.Kind kindOfStep = StepWords.kind(line.ingredient());
      steps.add(
          new FormulaStep(
              steps.size() + 1,
              line.ingredient(),
              kindOfStep,
              line.mass(),
              line.volume(),
              StepWords.warmth(line.ingredient()),
              kindOfStep == FormulaStep.Kind.INGREDIENT
                  ? substances.meant(line.ingredient())
                  : Optional.empty(),
              "",
              citation,
              standing));
    }
    return new Formula(
        code,
        name,
        kind,
        Offer.MIX,
        "",
        Formula.basisOf(steps, false),
        steps,
        true,
        note,
        citation,
        standing);
  }
}
