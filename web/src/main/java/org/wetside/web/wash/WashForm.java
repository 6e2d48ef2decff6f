package org.wetside.web.wash;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import org.wetside.app.wash.ForeseeWash;
import org.wetside.app.wash.WashAnswer;
import org.wetside.app.wash.WashWish;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;

/** The form about washing: reads every field and keeps each complaint beside it. */
final class WashForm {
  private final FieldReader reader;
  private final Optional<WashWish> wish;
  private final Optional<LocalTime> hung;
  private final Optional<DilutionRatio> agent;
  private final Optional<WashAnswer> answer;

  WashForm(FieldReader reader) {
    this.reader = reader;
    wish = readWish();
    hung = reader.maybe("hung", DryingQuery::time);
    agent = reader.maybe("agent", DilutionRatio::parse);
    answer = readAnswer();
  }

  private Optional<WashWish> readWish() {
    Optional<Volume> volume = reader.requiredVolume("volume", "volume of one fill");
    Optional<UnitOfUse> film = reader.maybe("rolls", WashQuery::film);
    Optional<Concentration> start =
        reader.maybe("start", text -> Concentration.parse(bare(text) ? text + "g/L" : text));
    Optional<Volume> carryOver = reader.maybeVolume("carryOver");
    Optional<Temperature> water = reader.maybeTemperature("temp");
    return reader.isGood()
        ? volume.map(
            fill ->
                new WashWish(
                    fill,
                    film.orElse(UnitOfUse.ONE_ROLL),
                    start,
                    carryOver,
                    water.orElse(WashWish.ORDINARY)))
        : Optional.empty();
  }

  private Optional<WashAnswer> readAnswer() {
    String method = reader.form().value("method");
    Optional<Integer> fills =
        method.equals(WashQuery.FILLS)
            ? reader.required("fills", "fills", WashQuery::count)
            : Optional.empty();
    Optional<Duration> dwell =
        reader.maybe(
            "dwell", text -> TimeSpan.parse("time in one fill", bare(text) ? text + "min" : text));
    Optional<FlowRate> flow =
        method.equals(WashQuery.RUNNING)
            ? reader.required("flow", "flow of water", WashForm::flow)
            : Optional.empty();
    Optional<Duration> time =
        method.equals(WashQuery.RUNNING)
            ? reader.required("minutes", "time of the wash", WashQuery::time)
            : Optional.empty();
    if (!reader.isGood() || wish.isEmpty()) {
      return Optional.empty();
    }
    ForeseeWash foresee = new ForeseeWash();
    try {
      if (fills.isPresent()) {
        return Optional.of(foresee.fills(wish.get(), fills.get(), dwell));
      }
      if (flow.isPresent() && time.isPresent()) {
        return Optional.of(foresee.running(wish.get(), flow.get(), time.get()));
      }
      return Optional.of(foresee.method(wish.get(), method, Optional.empty()));
    } catch (BadValueException refused) {
      reader.refuse(field(refused.thing()), refused);
      return Optional.empty();
    }
  }

  private static String field(String thing) {
    return switch (thing) {
      case "carry-over" -> "carryOver";
      case "fills" -> "fills";
      case "time in one fill" -> "dwell";
      case "flow of water" -> "flow";
      case "time of the wash" -> "minutes";
      case "strength of the fixer" -> "start";
      case "temperature of the wash water" -> "temp";
      case "water for one fill" -> "volume";
      case "way to wash" -> "method";
      default -> FilledForm.WHOLE;
    };
  }

  private static FlowRate flow(String text) {
    return FlowRate.parse(bare(text) ? text + "L/min" : text);
  }

  private static boolean bare(String text) {
    return text.strip().matches("-?\\d+(\\.\\d+)?");
  }

  /** As it was typed, with every complaint. */
  FilledForm shown() {
    return reader.form();
  }

  /** What the comparison of ways needs; empty when it was refused. */
  Optional<WashWish> wish() {
    return reader.isGood() ? wish : Optional.empty();
  }

  /** The wash foreseen; empty when it was refused. */
  Optional<WashAnswer> answer() {
    return reader.isGood() ? answer : Optional.empty();
  }

  /** When the film is hung up, if it was said. */
  Optional<LocalTime> hung() {
    return hung;
  }

  /** The dilution of wetting agent, if it was said. */
  Optional<DilutionRatio> agent() {
    return agent;
  }
}
