package org.wetside.web.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.HowTo;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.Known;

/**
 * A step of mixing in the words of a page or a card.
 *
 * @param step its place, from 1
 * @param name what goes in
 * @param amount how much, in the reader's units
 * @param flagged whether the balance cannot weigh it
 * @param how what to do; may be empty
 * @param more what else is to be known: exchange, warmth, limits
 * @param cautions for this moment
 */
public record StepLine(
    int step,
    String name,
    String amount,
    boolean flagged,
    String how,
    List<String> more,
    List<CautionView> cautions) {

  /** All steps of a formula in order of dissolving. */
  static List<StepLine> of(FormulaView view, Units units) {
    List<StepLine> lines = new ArrayList<>();
    view.waters().forEach(water -> lines.add(water(water, units)));
    view.ingredients().forEach(one -> lines.add(ingredient(one, units)));
    lines.sort(Comparator.comparingInt(StepLine::step));
    return lines;
  }

  private static StepLine water(WaterView water, Units units) {
    List<String> more = new ArrayList<>();
    warmth(water.lowC(), water.highC(), units, "at ", more);
    MeasureView measure = water.measure();
    String amount = volume(water.volumeMl(), units);
    return new StepLine(
        water.step(),
        water.toMake()
            ? "water to make"
            : water.text().startsWith("distilled") ? water.text() : "water",
        water.toMake() ? "up to " + amount : amount,
        false,
        measure == null ? "" : in(measure),
        more,
        water.cautions());
  }

  private static String in(MeasureView measure) {
    return measure.fillings() > 1
        ? measure.fillings() + " times the " + measure.name()
        : "in the " + measure.name();
  }

  private static StepLine ingredient(IngredientView one, Units units) {
    List<String> more = new ArrayList<>();
    SubstitutionView exchange = one.substitution();
    if (exchange != null) {
      more.add(exchange(exchange));
    }
    List<String> into = new ArrayList<>();
    warmth(one.waterLowC(), one.waterHighC(), units, "into water of ", into);
    if (!one.dissolving().isEmpty()) {
      into.add(one.dissolving());
      more.add(
          String.join("; ", into)
              + " ("
              + Known.words(
                  Objects.requireNonNullElse(one.dissolvingStanding(), ""),
                  Objects.requireNonNullElse(one.dissolvingSource(), ""))
              + ")");
    }
    if (!one.note().isEmpty()) {
      more.add(one.note());
    }
    Double grams = one.grams();
    return new StepLine(
        one.step(),
        one.name(),
        grams == null ? volume(one.volumeMl(), units) : HowTo.grams(grams),
        Boolean.FALSE.equals(one.weighable()),
        one.how(),
        more,
        one.cautions());
  }

  private static String exchange(SubstitutionView one) {
    String factor =
        "in place of "
            + one.specified()
            + ": × "
            + String.format(Locale.ROOT, "%.4f", one.factor())
            + ", computed ("
            + one.source().id()
            + ")";
    SourceView printed = one.printedSource();
    if (one.printed() == null || printed == null) {
      return factor;
    }
    return factor
        + "; printed "
        + one.printed()
        + " ("
        + printed.id()
        + ")"
        + (one.printedReversed() ? ", the wrong way round: not used" : "");
  }

  private static void warmth(
      @Nullable Double low, @Nullable Double high, Units units, String before, List<String> more) {
    if (low == null || high == null) {
      return;
    }
    Temperature from = Temperature.ofCelsius(low);
    Temperature to = Temperature.ofCelsius(high);
    more.add(
        before
            + (low.equals(high) ? units.words(from) : units.words(new TemperatureRange(from, to))));
  }

  private static String volume(@Nullable Double millilitres, Units units) {
    return millilitres == null ? "" : units.words(Volume.ofMillilitres(millilitres));
  }
}
