package org.wetside.web.mixing;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.Mix;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A question about mixing as it was typed; null or blank is not said.
 *
 * @param dilution for example {@code 1+31}
 * @param total for example {@code 256mL}
 * @param of name of what is in the bottle, for example {@code D-76}
 * @param rolls film for it, in rolls of 80 in²
 * @param minimum the maker's minimum for one roll, for example {@code 6mL}
 * @param packageMakes stock that a whole package of powders makes, for example {@code 1L}
 */
public record MixQuery(
    @Nullable String dilution,
    @Nullable String total,
    @Nullable String of,
    @Nullable String rolls,
    @Nullable String minimum,
    @Nullable String packageMakes) {

  /**
   * The question in the types of the trade.
   *
   * @param book the minimum of stock for a developer, where none was typed
   * @throws org.wetside.core.quantity.BadValueException when something typed is not understood
   */
  public Mix.Question question(Function<String, Optional<StockMinimum>> book) {
    Optional<UnitOfUse> film =
        Typed.maybe(rolls).map(text -> UnitOfUse.ofRolls(Typed.number("rolls", text, "2 or 0.75")));
    Optional<String> named = Typed.maybe(of);
    Optional<StockMinimum> least =
        Typed.maybe(minimum).map(MixQuery::stated).or(() -> named.flatMap(book));
    return new Mix.Question(
        Dilution.parse(Typed.required("dilution", dilution, "1+31")),
        Volume.parse(Typed.required("total to mix", total, "256mL")),
        named,
        film,
        Typed.maybe(packageMakes).map(Volume::parse),
        least);
  }

  private static StockMinimum stated(String text) {
    return new StockMinimum(
        Volume.parse(text), Standing.PUBLISHED, Citation.of("the leaflet, as typed"));
  }
}
