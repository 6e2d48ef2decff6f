package org.wetside.web.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.shelf.CareForBath;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.Replenishing;
import org.wetside.core.shelf.ReuseStep;
import org.wetside.core.shelf.ReuseTable;
import org.wetside.core.source.Standing;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/** Puts what is known of replenishing and reuse into the words of its page. */
final class CareWords {
  private final Units units;

  CareWords(Units units) {
    this.units = units;
  }

  CarePage page(
      Sheet sheet, Bottle bottle, UnitOfUse since, CareForBath.Answer answer, FilledForm form) {
    Optional<Replenishing> plan = answer.plan();
    return new CarePage(
        sheet,
        bottle.label().letter(),
        bottle.label().contents(),
        rolls(since),
        plan.map(one -> units.words(one.total())),
        answer
            .rate()
            .map(
                one ->
                    units.words(one.perRoll())
                        + " for a roll, "
                        + (one.standing() == Standing.MEASURED ? "" : one.standing().word() + ", ")
                        + one.source())
            .orElse(""),
        units.words(answer.mostAtOnce()) + " (" + answer.mostAtOnceSource() + ")",
        plan.map(one -> parts(one, bottle, form)).orElse(List.of()),
        plan.map(one -> units.words(one.waste())).orElse(""),
        answer.tables().stream().map(this::table).toList(),
        Cautions.open().whenHandling(bottle.label().contents(), bottle.label().bath()).stream()
            .map(CautionView::of)
            .toList(),
        form);
  }

  private static String rolls(UnitOfUse film) {
    return CareRoutes.number(film.rolls()) + (film.rolls() == 1 ? " roll" : " rolls");
  }

  private List<CarePage.Part> parts(Replenishing plan, Bottle bottle, FilledForm form) {
    Volume mark = bottle.label().full();
    Volume level = bottle.left();
    List<CarePage.Part> parts = new ArrayList<>();
    for (Replenishing.Part part : plan.parts()) {
      int number = parts.size() + 1;
      level = level.minus(part.waste()).plus(part.add());
      boolean full = mark.millilitres() - level.millilitres() < 0.5;
      parts.add(
          new CarePage.Part(
              number,
              units.words(part.out()),
              units.words(part.add()),
              part.back().millilitres() > 0 ? units.words(part.back()) : "",
              full ? "that is the mark" : "it then holds " + units.words(level),
              !form.isBlank("part-" + number)));
    }
    return parts;
  }

  private CarePage.Table table(CareForBath.NextRoll next) {
    ReuseTable table = next.table();
    ReuseStep first = table.steps().get(0);
    int roll = next.answer().roll();
    return new CarePage.Table(
        first.film()
            + " "
            + first.format()
            + " at "
            + Math.round(first.index().isoArithmetic())
            + ", "
            + first.dilution()
            + ", "
            + units.words(first.temperature()),
        units.words(first.volume()),
        roll,
        next.answer() instanceof ReuseTable.Known known
            ? Optional.of(FixingView.clock(known.time()))
            : Optional.empty(),
        table.last(),
        table.steps().stream().map(step -> row(step, roll)).toList(),
        first.standing().word() + ", " + first.citation());
  }

  private static CarePage.Row row(ReuseStep step, int next) {
    return new CarePage.Row(
        step.from() == step.to() ? String.valueOf(step.from()) : step.from() + " to " + step.to(),
        step.time().map(FixingView::clock),
        step.from() <= next && next <= step.to());
  }
}
