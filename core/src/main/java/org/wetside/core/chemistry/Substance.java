package org.wetside.core.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * Something that is weighed or measured out for a bath.
 *
 * @param name as it is shown, for example {@code sodium sulfite, heptahydrate (crystal)}
 * @param salt what it is whatever water it holds, for example {@code sodium sulfite}
 * @param formula its chemical formula as written; empty when it has none of its own
 * @param composition read from that formula; empty when it has none
 * @param molarMass from the composition; empty when it has none
 * @param words other names it goes by
 * @param inRecipes what a recipe that says no form calls it; a jar must be named in full
 * @param strengthPercent how much of the pure substance a liquid holds, percent; empty for a solid
 * @param solution strength at which it is kept as a solution; empty when it is not to be kept so
 * @param form how it dissolves
 * @param citation where this is read
 * @param standing how it is known
 */
public record Substance(
    String name,
    String salt,
    String formula,
    Optional<Composition> composition,
    Optional<MolarMass> molarMass,
    List<String> words,
    List<String> inRecipes,
    OptionalDouble strengthPercent,
    Optional<SolutionStrength> solution,
    DissolvingForm form,
    Citation citation,
    Standing standing) {
  /** Keeps unmodifiable copies. */
  public Substance {
    words = List.copyOf(words);
    inRecipes = List.copyOf(inRecipes);
  }

  /** Whether it is measured by volume. */
  public boolean isLiquid() {
    return form.liquid();
  }
}
