package org.wetside.app.mixing;

import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Volume;
import org.wetside.core.safety.Objection;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.StockMinima;

/** How much concentrate or stock and how much water make a working solution. */
public final class Mix {
  /**
   * What is to be mixed.
   *
   * @param dilution stock, 1+n, or a letter with its parts
   * @param total volume of working solution, above 0
   * @param substance name of what is in the bottle; empty when it was not said
   * @param film film to go into it; empty when stock is not to be checked
   * @param packageMakes stock that the whole package of powders makes, above 0; empty for a liquid,
   *     or when it was not said
   * @param minimum the maker's minimum as the user knows it; empty looks it up by the substance
   */
  public record Question(
      Dilution dilution,
      Volume total,
      Optional<String> substance,
      Optional<UnitOfUse> film,
      Optional<Volume> packageMakes,
      Optional<StockMinimum> minimum) {}

  /**
   * What to measure out.
   *
   * @param solution concentrate and water
   * @param stock whether it is enough for the film; empty when no film was given
   * @param warnings what speaks against taking so much of it; empty for most
   * @param cautions for handling the substance; never empty
   */
  public record Answer(
      WorkingSolution solution,
      Optional<StockRequirement> stock,
      List<Objection> warnings,
      List<Caution> cautions) {}

  /**
   * Computes the amounts.
   *
   * @throws org.wetside.core.quantity.BadValueException when the parts of the dilution are unknown
   *     or the total is 0
   */
  public Answer answer(Question question) {
    WorkingSolution solution = WorkingSolution.of(question.dilution(), question.total());
    return new Answer(
        solution,
        question.film().map(film -> checked(question, solution, film)),
        PartOfPackage.warnings(question, solution),
        question
            .substance()
            .map(name -> Cautions.open().of(name))
            .orElseGet(() -> List.of(Caution.none())));
  }

  private static StockRequirement checked(
      Question question, WorkingSolution solution, UnitOfUse film) {
    Optional<StockMinimum> minimum =
        question
            .minimum()
            .or(() -> question.substance().flatMap(name -> StockMinima.open().find(name)));
    return StockRequirement.check(solution.concentrate(), film, minimum);
  }
}
