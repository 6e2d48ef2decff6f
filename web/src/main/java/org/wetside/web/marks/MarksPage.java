package org.wetside.web.marks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.source.Standing;
import org.wetside.web.page.Sheet;

/**
 * Model of the page that explains the marks.
 *
 * @param sheet the sheet
 * @param hatches hatch of each bath and the words for it
 * @param standings every standing, best first
 * @param tape marks on the tape and what they mean
 */
public record MarksPage(
    Sheet sheet, Map<String, String> hatches, List<Standing> standings, Map<String, String> tape) {

  static MarksPage on(Sheet sheet) {
    return new MarksPage(sheet, hatchWords(), List.of(Standing.values()), tapeWords());
  }

  private static Map<String, String> hatchWords() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("presoak", "water, broken: pre-soak");
    words.put("rinse", "water, short: rinse");
    words.put("wash", "water, full lines: wash");
    words.put("developer", "leaning: developer");
    words.put("stop", "upright: stop bath");
    words.put("fixer", "crossed: fixer");
    words.put("washaid", "dots: wash aid");
    words.put("final", "few dots: final rinse");
    words.put("bleach", "brick: bleach");
    words.put("bleachfix", "brick, crossed: bleach-fix");
    words.put("reversal", "water and leaning: clearing bath");
    words.put("conditioner", "lines and dots: conditioner");
    words.put("stabiliser", "upright and dots: stabiliser");
    words.put("hardener", "upright with arms: hardener");
    return words;
  }

  private static Map<String, String> tapeWords() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("White on blue", "has happened");
    words.put("Ink on paper", "is to come");
    words.put("Height of the hatched shape", "liquid in the tank: slope up pour, slope down drain");
    words.put("Comb", "agitation, one tooth for each inversion; broken teeth were missed");
    words.put("Heavy edge", "the lid stays on; where it ends, light is safe");
    words.put("Pen line", "temperature of the bath as read; a ring is a reading; dotted: expected");
    words.put("Dotted upright, arrow", "where the plan had it, and how far it has moved");
    words.put("Torn gap", "time nobody watched; the chemistry went on");
    return words;
  }
}
