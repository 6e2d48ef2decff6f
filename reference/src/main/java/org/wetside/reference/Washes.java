package org.wetside.reference;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.ArealMass;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.wash.ColdWater;
import org.wetside.core.wash.Drying;
import org.wetside.core.wash.HalfTime;
import org.wetside.core.wash.ResidueLimit;
import org.wetside.core.wash.WashFigures;
import org.wetside.core.wash.WashMethod;

/** What is on file about washing and drying film. */
public final class Washes {
  private static final String LIMIT = "LE-500, microfilm and other film (ANSI IT9.1-1996)";

  private Washes() {}

  /** Volumes, half-times and the limit that a forecast rests on. */
  public static WashFigures figures() {
    List<ReferenceRow> rows = ReferenceTable.open("baths/washing_out").rows();
    return new WashFigures(
        Volume.ofMillilitres(one(rows, "absorbed").number("value")),
        Volume.ofMillilitres(one(rows, "carried over").number("value")),
        Concentration.ofGramsPerLitre(one(rows, "start").number("value")),
        of(rows, "half-time").stream()
            .map(
                row ->
                    new HalfTime(
                        TimeSpan.ofSeconds(row.number("value")), row.citation(), row.standing()))
            .sorted(Comparator.comparing(HalfTime::ordinary))
            .toList(),
        new ColdWater(
            of(rows, "cold water").stream()
                .map(
                    row ->
                        new ColdWater.Point(
                            Temperature.ofCelsius(row.number("water_c")), row.number("value")))
                .toList()),
        limit());
  }

  private static ResidueLimit limit() {
    ReferenceRow row = one(ReferenceTable.open("baths/wash_limits").rows(), LIMIT);
    return new ResidueLimit(
        LIMIT,
        ArealMass.ofGramsPerSquareMetre(row.number("grams_per_m2")),
        row.citation(),
        row.standing());
  }

  /** The ways to wash by name, the one that takes little water first. */
  public static List<WashMethod> methods() {
    List<ReferenceRow> flows = ReferenceTable.open("baths/wash_flow").rows();
    List<ReferenceRow> rows = ReferenceTable.open("processes/washes").rows();
    return BuiltInProcesses.washes().stream()
        .map(wash -> method(wash, rows, flows))
        .sorted(Comparator.comparing(method -> !method.slug().equals("changes-10")))
        .toList();
  }

  private static WashMethod method(
      FilmProcess wash, List<ReferenceRow> rows, List<ReferenceRow> flows) {
    ReferenceRow row =
        rows.stream()
            .filter(one -> one.text("process").equals(wash.slug()))
            .findFirst()
            .orElseThrow();
    Optional<Duration> completeChange =
        flows.stream()
            .filter(one -> one.text("process").equals(wash.slug()))
            .findFirst()
            .map(one -> TimeSpan.ofSeconds(one.number("change_s")));
    return new WashMethod(
        wash.slug(),
        wash.name(),
        wash.steps().stream().map(step -> part(step, completeChange.isPresent())).toList(),
        completeChange,
        row.citation(),
        row.standing());
  }

  private static WashMethod.Part part(Step step, boolean runs) {
    return new WashMethod.Part(
        step.duration().orElseThrow(),
        runs && step.kind() == StepKind.WASH,
        step.kind() == StepKind.WASH_AID);
  }

  /** Wetting agent and places to hang film. */
  public static Drying drying() {
    List<ReferenceRow> rows = ReferenceTable.open("baths/drying").rows();
    ReferenceRow agent = named(rows, "wetting agent");
    ReferenceRow dilution = named(rows, "dilution");
    return new Drying(
        new Drying.Agent(
            agent.text("words"),
            DilutionRatio.ofParts(1, dilution.number("parts_water")),
            dilution.standing(),
            minutes(agent, "least_min"),
            minutes(agent, "most_min"),
            agent.citation(),
            agent.standing()),
        rows.stream()
            .filter(row -> !row.text("warmest_c").isEmpty())
            .map(
                row ->
                    new Drying.Way(
                        row.text("way"),
                        row.text("words"),
                        minutes(row, "least_min"),
                        minutes(row, "most_min"),
                        Temperature.ofCelsius(row.number("warmest_c")),
                        row.citation(),
                        row.standing(),
                        row.note()))
            .toList());
  }

  private static Duration minutes(ReferenceRow row, String column) {
    return TimeSpan.ofSeconds(row.number(column) * 60);
  }

  private static ReferenceRow named(List<ReferenceRow> rows, String way) {
    return rows.stream().filter(row -> row.text("way").equals(way)).findFirst().orElseThrow();
  }

  private static ReferenceRow one(List<ReferenceRow> rows, String item) {
    return of(rows, item).get(0);
  }

  private static List<ReferenceRow> of(List<ReferenceRow> rows, String item) {
    return rows.stream().filter(row -> row.text("item").equals(item)).toList();
  }
}
