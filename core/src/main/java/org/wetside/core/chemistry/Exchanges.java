package org.wetside.core.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.wetside.core.source.Citation;

/**
 * Finds how one substance stands in for another: the same salt with other water always, other pairs
 * when a handbook has them. The factor is computed from molar masses, whatever is printed.
 */
public final class Exchanges {
  /** Carried along by a salt; what acts is the rest of it. */
  private static final Set<String> CARRIED = Set.of("H", "O", "Na", "K");

  private final Substances substances;
  private final List<PrintedFactor> rows;
  private final Citation weights;

  /**
   * @param substances by which the rows' names are understood
   * @param rows what handbooks print
   * @param weights where the atomic weights are published
   */
  public Exchanges(Substances substances, List<PrintedFactor> rows, Citation weights) {
    this.substances = substances;
    this.rows = List.copyOf(rows);
    this.weights = weights;
  }

  /** How much of what is held does the work of what is specified. */
  public Exchange of(Substance specified, Substance held) {
    Optional<PrintedFactor> row =
        rows.stream().filter(one -> names(one, specified, held)).findFirst();
    if (row.flatMap(PrintedFactor::refusal).isPresent()) {
      return new Exchange.Refused(row.get().refusal().orElseThrow(), row.get());
    }
    if (specified.strengthPercent().isPresent() && held.strengthPercent().isPresent()) {
      return specified.salt().equals(held.salt())
          ? new Exchange.Allowed(
              specified,
              held,
              specified.strengthPercent().getAsDouble() / held.strengthPercent().getAsDouble(),
              row.map(PrintedFactor::citation).orElse(held.citation()),
              row)
          : new Exchange.Unknown();
    }
    if (specified.isLiquid() || held.isLiquid()) {
      return new Exchange.Unknown();
    }
    OptionalDouble moles = moles(specified, held);
    boolean paired = row.isPresent() || specified.salt().equals(held.salt());
    if (moles.isEmpty() || !paired) {
      return new Exchange.Unknown();
    }
    double factor =
        moles.getAsDouble()
            * held.molarMass().orElseThrow().gramsPerMole()
            / specified.molarMass().orElseThrow().gramsPerMole();
    return new Exchange.Allowed(specified, held, factor, weights, row);
  }

  /**
   * Moles of what is held that hold as much of the acting part as one mole of what is specified.
   * Where both are nothing but alkali and hydroxide, the alkali is what counts.
   */
  static OptionalDouble moles(Substance specified, Substance held) {
    if (specified.composition().isEmpty() || held.composition().isEmpty()) {
      return OptionalDouble.empty();
    }
    Composition from = specified.composition().get();
    Composition to = held.composition().get();
    Set<String> acting = new TreeSet<>(from.atoms().keySet());
    acting.retainAll(to.atoms().keySet());
    acting.removeAll(CARRIED);
    for (String element : acting) {
      return OptionalDouble.of((double) from.count(element) / to.count(element));
    }
    int alkaliFrom = from.count("Na") + from.count("K");
    int alkaliTo = to.count("Na") + to.count("K");
    return alkaliFrom > 0 && alkaliTo > 0
        ? OptionalDouble.of((double) alkaliFrom / alkaliTo)
        : OptionalDouble.empty();
  }

  private boolean names(PrintedFactor row, Substance specified, Substance held) {
    boolean straight = is(row.specified(), specified) && is(row.held(), held);
    boolean refusedBackwards =
        row.refusal().isPresent() && is(row.specified(), held) && is(row.held(), specified);
    return straight || refusedBackwards;
  }

  /** A row names a substance, or a salt in whatever form. */
  private boolean is(String name, Substance one) {
    String plain = Substances.plain(name);
    return plain.equals(Substances.plain(one.salt()))
        || substances.find(name).filter(one::equals).isPresent();
  }
}
