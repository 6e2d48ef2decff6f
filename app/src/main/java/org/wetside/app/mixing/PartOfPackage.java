package org.wetside.app.mixing;

import java.util.List;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.safety.Material;
import org.wetside.core.safety.Nature;
import org.wetside.core.safety.Objection;
import org.wetside.reference.CombinationRules;
import org.wetside.reference.Materials;

/** Whether only a part of a package of powders would be dissolved. */
final class PartOfPackage {
  /** What is left of a package by rounding is no part. */
  private static final double ROUNDING = 0.005;

  private PartOfPackage() {}

  /**
   * What speaks against it. A package is one when its volume was said, or when its name says so; of
   * the latter nobody knows how much it makes, so that any amount may be a part.
   */
  static List<Objection> warnings(Mix.Question question, WorkingSolution solution) {
    Material read = Materials.open().ofIngredient(question.substance().orElse("powder"));
    boolean named = read.natures().contains(Nature.POWDER_PACKAGE);
    if (question.packageMakes().isEmpty() && !named) {
      return List.of();
    }
    if (question.packageMakes().isPresent()
        && isWhole(solution.concentrate(), question.packageMakes().get())) {
      return List.of();
    }
    Material whole =
        named
            ? read
            : read.with(Nature.POWDER_PACKAGE)
                .named(
                    question
                        .substance()
                        .map(name -> "the powder package of " + name)
                        .orElse("a powder package"));
    return CombinationRules.open().partOf(whole);
  }

  private static boolean isWhole(Volume stock, Volume makes) {
    if (makes.millilitres() <= 0) {
      throw new BadValueException(
          "volume that the package makes", makes.toString(), "it must be above 0 mL");
    }
    double packages = stock.ratioTo(makes);
    return packages >= 1 - ROUNDING && Math.abs(packages - Math.rint(packages)) <= ROUNDING;
  }
}
