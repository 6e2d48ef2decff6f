package org.wetside.core.chemistry;

import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Mass;
import org.wetside.core.quantity.Volume;

/**
 * A line of a formula as somebody writes it: how much of what.
 *
 * @param ingredient for example {@code metol} or {@code water to make}
 * @param mass what is weighed, above 0; empty for what is poured
 * @param volume what is measured, above 0; empty for what is weighed
 */
public record FormulaLine(String ingredient, Optional<Mass> mass, Optional<Volume> volume) {
  private static final int LONGEST = 80;

  /** Refuses a line without a name or with two amounts. */
  public FormulaLine {
    ingredient = ingredient.strip();
    if (ingredient.isEmpty() || ingredient.length() > LONGEST) {
      throw new BadValueException(
          "ingredient", ingredient, "1 to " + LONGEST + " characters, for example 2 g metol");
    }
    if (mass.isPresent() == volume.isPresent()) {
      throw new BadValueException(
          "amount of " + ingredient, "both or neither", "say a mass or a volume");
    }
    if (mass.filter(one -> one.grams() <= 0).isPresent()
        || volume.filter(one -> one.millilitres() <= 0).isPresent()) {
      throw new BadValueException(
          "amount of " + ingredient, "0", "it must be above 0; leave the line out for nothing");
    }
  }

  /**
   * Reads {@code 2.0 g metol}, {@code 750 mL water 52 C}, {@code 1 L water to make}.
   *
   * @throws BadValueException when no amount with its unit stands in front
   */
  public static FormulaLine parse(String line) {
    String text = line.strip();
    int end = 0;
    while (end < text.length() && "0123456789.".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    int unit = end;
    while (unit < text.length() && text.charAt(unit) == ' ') {
      unit++;
    }
    int name = unit;
    while (name < text.length() && text.charAt(name) != ' ') {
      name++;
    }
    String amount = text.substring(0, end) + " " + text.substring(unit, name);
    String word = text.substring(unit, name).toLowerCase(Locale.ROOT);
    boolean poured = word.equals("ml") || word.equals("l");
    boolean weighed = word.equals("g") || word.equals("mg") || word.equals("kg");
    if (end == 0 || !(poured || weighed)) {
      throw new BadValueException(
          "line of the formula", text, "write amount, unit and name, for example 2 g metol");
    }
    return new FormulaLine(
        text.substring(name),
        weighed ? Optional.of(Mass.parse(amount)) : Optional.empty(),
        poured ? Optional.of(Volume.parse(amount)) : Optional.empty());
  }

  /** As {@link #parse} reads it. */
  @Override
  public String toString() {
    return mass.map(Mass::toString).or(() -> volume.map(Volume::toString)).orElseThrow()
        + " "
        + ingredient;
  }
}
