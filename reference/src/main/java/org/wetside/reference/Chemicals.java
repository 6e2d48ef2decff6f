package org.wetside.reference;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.chemistry.AtomicWeights;
import org.wetside.core.chemistry.Composition;
import org.wetside.core.chemistry.DissolvingForm;
import org.wetside.core.chemistry.Exchanges;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.chemistry.PrintedFactor;
import org.wetside.core.chemistry.SolutionStrength;
import org.wetside.core.chemistry.Substance;
import org.wetside.core.chemistry.Substances;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;

/** What is on file for weighing out: substances, how they stand in for each other, measures. */
public final class Chemicals {
  private static final String WRONG_WAY = "printed the wrong way round";
  private static final String NO_SWAP = "no molar swap";

  private final AtomicWeights weights;
  private final Substances substances;
  private final Exchanges exchanges;

  private Chemicals(AtomicWeights weights, Substances substances, Exchanges exchanges) {
    this.weights = weights;
    this.substances = substances;
    this.exchanges = exchanges;
  }

  /** Reads the files. */
  public static Chemicals open() {
    AtomicWeights weights = weightsOnFile();
    Map<String, DissolvingForm> forms = forms();
    Map<String, SolutionStrength> solutions = solutions();
    Substances substances =
        new Substances(
            ReferenceTable.open("baths/substances").rows().stream()
                .map(row -> substance(row, forms, solutions, weights))
                .toList());
    List<PrintedFactor> printed =
        ReferenceTable.open("baths/substitutions").rows().stream().map(Chemicals::printed).toList();
    return new Chemicals(
        weights, substances, new Exchanges(substances, printed, weights.citation()));
  }

  /** Standard atomic weights. */
  public AtomicWeights weights() {
    return weights;
  }

  /** The substances there are. */
  public Substances substances() {
    return substances;
  }

  /** How one stands in for another. */
  public Exchanges exchanges() {
    return exchanges;
  }

  /** Syringes and graduates that are usual at home. */
  public static Measures usualMeasures() {
    return new Measures(
        ReferenceTable.open("baths/measures").rows().stream()
            .map(
                row ->
                    new Measure(
                        row.text("measure"),
                        Volume.ofMillilitres(row.number("capacity_ml")),
                        Volume.ofMillilitres(row.number("division_ml")),
                        row.standing()))
            .toList());
  }

  private static AtomicWeights weightsOnFile() {
    Map<String, Double> grams = new LinkedHashMap<>();
    Citation citation = Citation.of("");
    for (ReferenceRow row : ReferenceTable.open("baths/atomic_weights").rows()) {
      grams.put(row.text("element"), row.number("grams_per_mol"));
      citation = row.citation();
    }
    return new AtomicWeights(grams, citation);
  }

  private static Map<String, DissolvingForm> forms() {
    Map<String, DissolvingForm> forms = new HashMap<>();
    for (ReferenceRow row : ReferenceTable.open("baths/dissolving").rows()) {
      OptionalDouble warmest = row.maybeNumber("warmest_c");
      Optional<TemperatureRange> water =
          warmest.isEmpty()
              ? Optional.empty()
              : Optional.of(
                  new TemperatureRange(
                      Temperature.ofCelsius(row.maybeNumber("coldest_c").orElse(5)),
                      Temperature.ofCelsius(warmest.getAsDouble())));
      forms.put(
          row.text("form"),
          new DissolvingForm(
              row.text("form"),
              row.text("liquid").equals("yes"),
              water,
              row.text("advice"),
              row.citation(),
              row.standing()));
    }
    return forms;
  }

  private static Map<String, SolutionStrength> solutions() {
    Map<String, SolutionStrength> solutions = new HashMap<>();
    for (ReferenceRow row : ReferenceTable.open("baths/solutions").rows()) {
      solutions.put(
          row.text("substance"),
          new SolutionStrength(
              row.number("solution_percent"), row.note(), row.citation(), row.standing()));
    }
    return solutions;
  }

  private static Substance substance(
      ReferenceRow row,
      Map<String, DissolvingForm> forms,
      Map<String, SolutionStrength> solutions,
      AtomicWeights weights) {
    String formula = row.text("formula");
    Optional<Composition> composition =
        formula.isEmpty() ? Optional.empty() : Optional.of(Composition.parse(formula));
    DissolvingForm form = forms.get(row.text("form"));
    if (form == null) {
      throw new IllegalStateException("substances.csv: no such form: " + row);
    }
    return new Substance(
        row.text("substance"),
        row.text("salt"),
        formula,
        composition,
        composition.map(weights::of),
        names(row.text("words")),
        names(row.text("in_recipes")),
        row.maybeNumber("strength_percent"),
        Optional.ofNullable(solutions.get(row.text("substance"))),
        form,
        row.citation(),
        row.standing());
  }

  private static List<String> names(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split("\\|", -1));
  }

  private static PrintedFactor printed(ReferenceRow row) {
    String kind = row.text("kind");
    String words = row.text("printed_factor");
    return new PrintedFactor(
        row.text("specified"),
        row.text("held"),
        words,
        kind.equals(NO_SWAP) ? OptionalDouble.empty() : leadingNumber(words),
        kind.equals(WRONG_WAY),
        kind.equals(NO_SWAP) ? Optional.of(row.note()) : Optional.empty(),
        row.note(),
        row.citation(),
        row.standing());
  }

  /** Of {@code 1.2 (rounded)} the 1.2, of {@code 5/14 = 0.357} what stands behind the sign. */
  private static OptionalDouble leadingNumber(String words) {
    String number = words.substring(words.indexOf('=') + 1).strip();
    int end = number.indexOf(' ') < 0 ? number.length() : number.indexOf(' ');
    return end == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(number.substring(0, end)));
  }
}
