package org.wetside.web.shelf;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.quantity.Units;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Verdict;

/**
 * A bottle as the pages show it.
 *
 * @param letter its own
 * @param hatch its hatch
 * @param bath the word for it
 * @param title contents and what they are
 * @param left what is left, in words
 * @param story what is known of it, in a sentence
 * @param facts name and figure of each fact, in order
 * @param low whether less than a tenth is left
 * @param mixable whether a working solution is mixed from it
 * @param verdict whether to use it, and why
 * @param discarded whether it is off the shelf
 * @param drawing how it is drawn
 */
public record BottleLine(
    String letter,
    String hatch,
    String bath,
    String title,
    String left,
    String story,
    Map<String, String> facts,
    boolean low,
    boolean mixable,
    VerdictView verdict,
    boolean discarded,
    BottleDrawing drawing) {
  private static final double NEARLY_EMPTY = 0.1;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** The line of a bottle on that day, in those units. */
  public static BottleLine of(JudgedBottle judged, LocalDate today, Units units) {
    Bottle bottle = judged.bottle();
    return new BottleLine(
        bottle.label().letter(),
        Hatches.of(bottle.label().bath()),
        bottle.label().bath().word(),
        bottle.label().contents() + ", " + bottle.label().role().word(),
        units.words(bottle.left()),
        story(bottle, VerdictView.of(judged.verdict()).saysAge() ? "" : age(bottle, today)),
        facts(judged, units),
        bottle.fullness() < NEARLY_EMPTY,
        bottle.label().role() == BottleRole.CONCENTRATE
            || bottle.label().role() == BottleRole.STOCK,
        VerdictView.of(judged.verdict()),
        bottle.discarded(),
        BottleDrawing.of(bottle));
  }

  private static String leftOf(Bottle bottle, Units units) {
    return units.number(bottle.left()) + " of " + units.words(bottle.label().full());
  }

  private static Map<String, String> facts(JudgedBottle judged, Units units) {
    Bottle bottle = judged.bottle();
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("left", leftOf(bottle, units));
    bottle.label().mixedOn().ifPresent(day -> facts.put("mixed", DAY.format(day)));
    bottle.label().openedOn().ifPresent(day -> facts.put("opened", DAY.format(day)));
    if (bottle.film().rolls() > 0) {
      facts.put("through it", rolls(bottle.film().rolls()));
    }
    if (judged.verdict().kind() != Verdict.Kind.DISCARD) {
      work(facts, judged, units);
    }
    said(facts, "dilution", bottle.label().dilution());
    said(facts, "batch", bottle.label().batch());
    said(facts, "owner", bottle.label().owner());
    facts.put("kept", bottle.storage().word());
    facts.put("after use", bottle.label().use().word());
    return facts;
  }

  /** What a bottle that may be used can still do. */
  private static void work(Map<String, String> facts, JudgedBottle judged, Units units) {
    judged.left().ifPresent(left -> facts.put("it still does", rolls(left.rolls())));
    for (JudgedBottle.FilmLeft film : judged.rolls()) {
      facts.put(film.film(), film.rolls() + ", " + film.waiting() + " waiting");
    }
    judged
        .fixing()
        .ifPresent(
            fix ->
                facts.put(
                    "fix next", FixingView.clock(fix.time()) + " at " + units.words(fix.at())));
  }

  private static void said(Map<String, String> facts, String name, String words) {
    if (!words.isEmpty()) {
      facts.put(name, words);
    }
  }

  private static String rolls(double rolls) {
    String count = String.format(Locale.ROOT, "%.2f", rolls).replaceFirst("\\.?0+$", "");
    return count + (rolls == 1 ? " roll" : " rolls");
  }

  private static String story(Bottle bottle, String age) {
    String note = bottle.label().note();
    return "A " + bottle.label().bath().word() + age + "." + (note.isEmpty() ? "" : " " + note);
  }

  private static String age(Bottle bottle, LocalDate today) {
    return bottle
        .label()
        .mixedOn()
        .or(bottle.label()::openedOn)
        .map(day -> ChronoUnit.DAYS.between(day, today))
        .map(
            days ->
                (bottle.label().mixedOn().isPresent() ? ", mixed " : ", opened ")
                    + (days == 0 ? "today" : days == 1 ? "yesterday" : days + " days ago"))
        .orElse(", age not known");
  }
}
