package org.wetside.app.formula;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaLine;
import org.wetside.core.chemistry.OwnFormula;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.Formulas;
import org.wetside.store.Database;
import org.wetside.store.OwnFormulas;

/** Keeps formulas of the user's own. */
public final class KeepFormula {
  private static final List<String> RESERVED = List.of("new", "batches");

  private final Supplier<Database> database;
  private final Clock clock;
  private final FormulaBook book;

  /** In this home. */
  public KeepFormula(Supplier<Database> database, Clock clock, FormulaBook book) {
    this.database = database;
    this.clock = clock;
    this.book = book;
  }

  /**
   * Keeps one, in place of the user's own of the same short name.
   *
   * @throws BadValueException when that name stands for one on file, it makes no volume, or things
   *     would meet that must not
   */
  public Formula keep(OwnFormula formula) {
    if (RESERVED.contains(Formulas.plain(formula.code()))) {
      throw new BadValueException(
          "formula name", formula.code(), "that word stands for something else; choose another");
    }
    Optional<Formula> known = book.find(formula.code());
    if (known.filter(one -> !one.own()).isPresent()) {
      throw new BadValueException(
          "formula name", formula.code(), "it stands for one on file; choose another");
    }
    Formula whole = formula.asFormula(book.chemicals().substances());
    Optional<String> refusal = whole.refusal();
    if (refusal.isPresent()) {
      throw new BadValueException(
          "lines of the formula",
          formula.code(),
          refusal.get() + "; end with a line such as 1000 mL water to make");
    }
    SafeOrder.require(formula.lines().stream().map(FormulaLine::ingredient).toList());
    database
        .get()
        .change(
            session -> {
              OwnFormulas own = new OwnFormulas(session);
              known.ifPresent(one -> own.remove(one.code()));
              own.keep(formula, clock.instant());
            });
    return whole;
  }

  /**
   * Takes one of the user's own away; batches keep what they were mixed from.
   *
   * @return the formula as it was
   * @throws BadValueException when there is no own formula of that name
   */
  public Formula remove(String name) {
    Formula known = book.require(name);
    if (!known.own()) {
      throw new BadValueException(
          "formula", known.code(), "it is on file and stays; only your own are taken away");
    }
    database.get().change(session -> new OwnFormulas(session).remove(known.code()));
    return known;
  }
}
