package org.wetside.web.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.page.BalanceText;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;

/** What is typed into the form of a formula, read field by field. */
final class FormulaWish {
  /** Begins the names of the fields in which something stands in for an ingredient. */
  static final String HAVE = "have";

  private final FieldReader reader;

  FormulaWish(FilledForm form, Units units) {
    reader = new FieldReader(form, units);
  }

  /** The form with all complaints so far. */
  FilledForm form() {
    return reader.form();
  }

  /** The first complaint. */
  BadValueException refusal() {
    String words = String.join("; ", form().messages().values());
    return new BadValueException("what was typed", "", words);
  }

  /** The question; empty when the form has complaints. */
  Optional<WeighOut.Question> question(String formula) {
    Optional<Volume> make = reader.maybeVolume("make");
    Optional<Balance> balance = reader.maybe("balance", BalanceText::parse);
    Optional<Measures> measures = reader.maybe("measures", FormulaWish::measures);
    List<String> have = new ArrayList<>();
    form().values().keySet().stream()
        .filter(name -> name.startsWith(HAVE) && !form().isBlank(name))
        .sorted()
        .forEach(name -> have.add(form().value(name)));
    return reader.isGood()
        ? Optional.of(new WeighOut.Question(formula, make, have, balance, measures))
        : Optional.empty();
  }

  private static Measures measures(String text) {
    List<Measure> all = new ArrayList<>();
    for (String part : text.split("[;,]", -1)) {
      if (!part.isBlank()) {
        all.add(Measure.parse(part));
      }
    }
    return new Measures(all);
  }

  /** The field that a complaint is about. */
  static String fieldOf(BadValueException refused) {
    return switch (refused.thing()) {
      case "volume to make", "volume" -> "make";
      case "balance step" -> "balance";
      default -> FilledForm.WHOLE;
    };
  }
}
