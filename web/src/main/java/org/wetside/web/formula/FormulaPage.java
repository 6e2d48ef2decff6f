package org.wetside.web.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of one formula, weighed out.
 *
 * @param sheet the sheet
 * @param view the formula; as it is written when what was typed is refused
 * @param lines its steps in words
 * @param balance what it is weighed on when nothing is said, in words
 * @param measures what is measured with when nothing is said, in words
 * @param choices what may stand in, by the field's name: each with the label of its ingredient
 * @param form what was typed
 * @param card where the card to print is; empty when it cannot be mixed
 */
public record FormulaPage(
    Sheet sheet,
    FormulaView view,
    List<StepLine> lines,
    String balance,
    String measures,
    List<Choice> choices,
    FilledForm form,
    Optional<String> card) {
  /** Keeps unmodifiable copies. */
  public FormulaPage {
    lines = List.copyOf(lines);
    choices = List.copyOf(choices);
  }

  /**
   * What may stand in for one ingredient.
   *
   * @param field name of the field
   * @param ingredient as the formula writes it
   * @param names what may be there instead
   */
  public record Choice(String field, String ingredient, List<String> names) {
    /** The words to choose from, the formula's own first. */
    public Map<String, String> words() {
      Map<String, String> words = new LinkedHashMap<>();
      words.put("", "as the formula says");
      names.forEach(name -> words.put(name, name));
      return words;
    }
  }

  /** What the balance cannot weigh, by name. */
  public List<String> tooLittle() {
    return lines.stream().filter(StepLine::flagged).map(StepLine::name).toList();
  }

  /** The same as a sentence ends: {@code metol and borax decahydrate}. */
  public String tooLittleWords() {
    List<String> names = tooLittle();
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** Where this formula is. */
  public String address() {
    return FormulaAddress.of(view.formula());
  }
}
