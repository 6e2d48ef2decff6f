package org.wetside.web.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * A load as it is wished for, every part as it would be typed.
 *
 * @param rolls numbers of the rolls, from the bottom of the tank
 * @param tank name of the tank
 * @param process short name of the process; null for {@code small-tank}
 * @param developer name
 * @param dilution {@code stock}, {@code 1+1} or a letter; null for stock
 * @param temp temperature with its unit
 * @param time the person's own development time, such as {@code 9:45}; null to take the one found
 * @param source where that time stands
 * @param fill volume with its unit; null for the smallest that will do
 * @param bottles letter of the bottle by bath, such as {@code {"fixer": "F"}}
 * @param note anything else
 */
public record LoadBody(
    @Nullable List<String> rolls,
    @Nullable String tank,
    @Nullable String process,
    @Nullable String developer,
    @Nullable String dilution,
    @Nullable String temp,
    @Nullable String time,
    @Nullable String source,
    @Nullable String fill,
    @Nullable Map<String, String> bottles,
    @Nullable String note) {

  /**
   * The wish.
   *
   * @throws BadValueException naming the part and its limit
   */
  public LoadWish wish() {
    Map<BathKind, String> letters = new EnumMap<>(BathKind.class);
    if (bottles != null) {
      bottles.forEach((bath, letter) -> letters.put(BathKind.fromWord(bath), letter));
    }
    return new LoadWish(
        rolls == null ? List.of() : rolls,
        required("tank", tank, "Double"),
        process == null || process.isBlank() ? "small-tank" : process,
        new Recipe(
            required("developer", developer, "D-76"),
            dilution == null || dilution.isBlank() ? Dilution.stock() : Dilution.parse(dilution),
            Temperature.parse(required("temperature", temp, "20C"))),
        own(),
        fill == null || fill.isBlank() ? Optional.empty() : Optional.of(Volume.parse(fill)),
        letters,
        Optional.empty(),
        note == null ? "" : note);
  }

  private Optional<ChosenTime> own() {
    if (time == null || time.isBlank()) {
      return Optional.empty();
    }
    boolean sourced = source != null && !source.isBlank();
    return Optional.of(
        new ChosenTime(
            TimeSpan.parse("development time", time),
            sourced ? Standing.PUBLISHED : Standing.FROM_MEMORY,
            sourced ? String.valueOf(source) : "typed without a source",
            Optional.empty()));
  }

  private static String required(String thing, @Nullable String given, String example) {
    if (given == null || given.isBlank()) {
      throw new BadValueException(thing, "", "say which, for example " + example);
    }
    return given;
  }
}
