package org.wetside.web.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.times.TimeWords;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.web.page.FilledForm;

/** The form of a load: its rolls, and how they are developed. */
final class LoadForm {
  /** Baths a bottle is chosen for, in the order of the sink. */
  static final List<BathKind> BATHS =
      List.of(
          BathKind.DEVELOPER,
          BathKind.STOP_BATH,
          BathKind.FIXER,
          BathKind.WASH_AID,
          BathKind.FINAL_RINSE);

  /** What most times are printed for. */
  private static final Temperature USUAL = Temperature.ofCelsius(20);

  private FilledForm form;
  private final List<String> rolls;
  private final Units units;

  LoadForm(FilledForm form, List<String> rolls, Units units) {
    this.form = form;
    this.rolls = rolls;
    this.units = units;
  }

  /** The name of the field for a bath's bottle. */
  static String bottleField(BathKind bath) {
    return "bottle-" + bath.word().replace(' ', '-');
  }

  /** A fresh one. */
  static FilledForm fresh(String tank, Units units) {
    return FilledForm.of(
        Map.of(
            "tank", tank, "process", "small-tank", "dilution", "1+1", "temp", units.words(USUAL)));
  }

  /** Filled from a load. */
  static FilledForm of(Load load, Units units) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("tank", load.tank());
    values.put("process", load.process());
    values.put("developer", load.recipe().developer());
    values.put("dilution", load.recipe().dilution().label());
    values.put("temp", units.words(load.recipe().temperature()));
    values.put("fill", units.words(load.fill()));
    values.put("note", load.note());
    load.bottles().forEach((bath, letter) -> values.put(bottleField(bath), letter));
    boolean own = load.time().band().isEmpty() && load.time().standing() == Standing.PUBLISHED;
    if (own) {
      values.put("time", TimeWords.clock(load.time().time()));
      values.put("source", load.time().source());
    }
    return FilledForm.of(values);
  }

  /** What is wanted; the form then holds a message for every field that cannot be read. */
  Optional<LoadWish> read() {
    if (rolls.isEmpty()) {
      form = form.saying("rolls", "Tick at least one roll.");
    }
    if (form.isBlank("developer")) {
      form = form.saying("developer", "Say which developer, for example D-76.");
    }
    Optional<Dilution> dilution = field("dilution", Dilution::parse);
    Optional<Temperature> temperature = field("temp", units::temperature);
    Optional<Volume> fill = field("fill", units::volume);
    Optional<Duration> time = field("time", text -> TimeSpan.parse("development time", text));
    if (temperature.isEmpty() && form.message("temp") == null) {
      form = form.saying("temp", "Say how warm the developer is, for example 20C.");
    }
    if (form.isRefused()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new LoadWish(
              rolls,
              form.value("tank"),
              form.value("process"),
              new Recipe(
                  form.value("developer"),
                  dilution.orElseGet(Dilution::stock),
                  temperature.orElseThrow()),
              time.map(this::own),
              fill,
              bottles(),
              Optional.empty(),
              form.value("note")));
    } catch (BadValueException refusal) {
      say(refusal);
      return Optional.empty();
    }
  }

  /** Puts a refusal beside the field it is about. */
  void say(BadValueException refusal) {
    String field =
        switch (refusal.thing()) {
          case "developer temperature" -> "temp";
          case "development time" -> "time";
          case "fill" -> "fill";
          case "tank" -> "tank";
          case "process" -> "process";
          case "developer" -> "developer";
          case "note" -> "note";
          case "rolls" -> "rolls";
          default -> FilledForm.WHOLE;
        };
    form = form.saying(field, refusal);
  }

  /** The form as typed, with what is wrong. */
  FilledForm form() {
    return form;
  }

  private ChosenTime own(Duration time) {
    String source = form.value("source");
    return new ChosenTime(
        time,
        source.isEmpty() ? Standing.FROM_MEMORY : Standing.PUBLISHED,
        source.isEmpty() ? "typed without a source" : source,
        Optional.empty());
  }

  private Map<BathKind, String> bottles() {
    Map<BathKind, String> bottles = new EnumMap<>(BathKind.class);
    for (BathKind bath : BATHS) {
      if (!form.isBlank(bottleField(bath))) {
        bottles.put(bath, form.value(bottleField(bath)));
      }
    }
    return bottles;
  }

  private <T> Optional<T> field(String name, Function<String, T> parse) {
    if (form.isBlank(name)) {
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(form.value(name)));
    } catch (BadValueException refusal) {
      form = form.saying(name, refusal);
      return Optional.empty();
    }
  }

  /** Numbers from ticks and from a list with commas. */
  static List<String> numbers(List<String> ticked, List<String> listed) {
    List<String> numbers = new ArrayList<>();
    ticked.forEach(one -> addOnce(numbers, one));
    for (String list : listed) {
      for (String one : list.split(",", -1)) {
        addOnce(numbers, one);
      }
    }
    return numbers;
  }

  private static void addOnce(List<String> numbers, String one) {
    String number = one.strip();
    if (!number.isEmpty() && !numbers.contains(number)) {
      numbers.add(number);
    }
  }
}
