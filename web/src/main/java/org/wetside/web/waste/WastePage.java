package org.wetside.web.waste;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wetside.core.bath.BathKind;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.waste.WasteKind;
import org.wetside.web.page.Count;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the book of waste.
 *
 * @param sheet the sheet
 * @param waste the jugs
 * @param form what was typed into one of its forms
 * @param bottles letter and contents of what can be poured from
 */
public record WastePage(
    Sheet sheet, WasteView waste, FilledForm form, Map<String, String> bottles) {
  /** Keeps the order of the bottles. */
  public WastePage {
    bottles = new LinkedHashMap<>(bottles);
  }

  /** How many jugs. */
  public String count() {
    return Count.inside(waste.jugs().size(), "jug");
  }

  /** Everything in them together. */
  public String together() {
    return sheet.volume(waste.jugs().stream().mapToDouble(JugView::filledMl).sum());
  }

  /** The jugs to choose from. */
  public Map<String, String> choices() {
    Map<String, String> words = new LinkedHashMap<>();
    for (JugView jug : waste.jugs()) {
      words.put(jug.jug(), jug.jug() + ", " + jug.kind());
    }
    return words;
  }

  /** Kinds of waste to choose from. */
  public Map<String, String> kinds() {
    Map<String, String> words = new LinkedHashMap<>();
    for (WasteKind kind : WasteKind.values()) {
      words.put(kind.word(), kind.word() + ": " + kind.takes());
    }
    return words;
  }

  /** Kinds of bath to choose from, and none. */
  public Map<String, String> baths() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("", "no bath, such as wash water");
    Arrays.stream(BathKind.values()).forEach(kind -> words.put(kind.word(), kind.word()));
    return words;
  }

  /** Bottles to pour from, and none. */
  static Map<String, String> bottles(List<Bottle> onShelf) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("", "none: by hand");
    for (Bottle bottle : onShelf) {
      words.put(
          bottle.label().letter(),
          String.format(
              Locale.ROOT,
              "%s: %s %s",
              bottle.label().letter(),
              bottle.label().contents(),
              bottle.label().role().word()));
    }
    return words;
  }
}
