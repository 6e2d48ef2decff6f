package org.wetside.web.formula;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.Exchange;
import org.wetside.core.chemistry.PrintedFactor;
import org.wetside.core.chemistry.Substance;
import org.wetside.reference.Bibliography;

/**
 * One substance in place of another.
 *
 * @param specified what the formula asks for
 * @param held what is there
 * @param factor how much of what is held for one of what is specified, computed; this is used
 * @param source what it is computed from
 * @param specifiedGramsPerMole molar mass of the one; null when it is exchanged by strength
 * @param heldGramsPerMole molar mass of the other; likewise
 * @param printed the factor as a handbook prints it; null when none does
 * @param printedFactor the same as a number
 * @param printedGrams what the printed factor would give; null when it gives no mass
 * @param printedReversed whether it is printed the wrong way round, and must not be used
 * @param printedSource where it is printed
 * @param note what else is known about it; may be empty
 */
public record SubstitutionView(
    String specified,
    String held,
    double factor,
    SourceView source,
    @Nullable Double specifiedGramsPerMole,
    @Nullable Double heldGramsPerMole,
    @Nullable String printed,
    @Nullable Double printedFactor,
    @Nullable Double printedGrams,
    boolean printedReversed,
    @Nullable SourceView printedSource,
    String note) {
  static SubstitutionView of(
      Exchange.Allowed exchange, Optional<Double> specifiedGrams, Bibliography sources) {
    Optional<PrintedFactor> row = exchange.printed().filter(one -> !one.words().isEmpty());
    Optional<Double> number =
        row.filter(one -> one.factor().isPresent()).map(one -> one.factor().getAsDouble());
    boolean byMass = !exchange.held().isLiquid();
    return new SubstitutionView(
        exchange.specified().name(),
        exchange.held().name(),
        exchange.factor(),
        SourceView.of(exchange.citation(), sources),
        byMass ? mass(exchange.specified()) : null,
        byMass ? mass(exchange.held()) : null,
        row.map(PrintedFactor::words).orElse(null),
        number.orElse(null),
        number.flatMap(one -> specifiedGrams.map(grams -> one * grams)).orElse(null),
        row.filter(PrintedFactor::reversed).isPresent(),
        row.map(one -> SourceView.of(one.citation(), sources)).orElse(null),
        exchange.printed().map(PrintedFactor::note).orElse(""));
  }

  private static @Nullable Double mass(Substance substance) {
    return substance.molarMass().map(one -> one.gramsPerMole()).orElse(null);
  }
}
