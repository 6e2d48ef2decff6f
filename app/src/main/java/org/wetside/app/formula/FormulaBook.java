package org.wetside.app.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.OwnFormula;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.Chemicals;
import org.wetside.reference.Formulas;

/** Every formula there is: those on file, then the user's own. */
public final class FormulaBook {
  private final Chemicals chemicals = Chemicals.open();
  private final Formulas onFile = Formulas.open(chemicals.substances());
  private final Supplier<List<OwnFormula>> own;

  /**
   * @param own the user's own, read when first needed
   */
  public FormulaBook(Supplier<List<OwnFormula>> own) {
    this.own = own;
  }

  /** Only what is on file, for whoever has no home at hand. */
  public static FormulaBook onFileOnly() {
    return new FormulaBook(List::of);
  }

  /** What is on file for weighing out. */
  public Chemicals chemicals() {
    return chemicals;
  }

  /** All, those on file first. */
  public List<Formula> all() {
    List<Formula> all = new ArrayList<>(onFile.all());
    own.get().forEach(one -> all.add(one.asFormula(chemicals.substances())));
    return all;
  }

  /** The one of that name on file, else the user's own. */
  public Optional<Formula> find(String name) {
    Optional<Formula> found = onFile.find(name);
    if (found.isPresent()) {
      return found;
    }
    String wanted = Formulas.plain(name);
    return own.get().stream()
        .filter(one -> Formulas.plain(one.code()).equals(wanted))
        .findFirst()
        .map(one -> one.asFormula(chemicals.substances()));
  }

  /**
   * The one of that name.
   *
   * @throws BadValueException when there is none
   */
  public Formula require(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new BadValueException(
                    "formula",
                    name.strip(),
                    "there is none of that name; \"wetside formulas\" lists those there are"));
  }
}
