package org.wetside.web.shelf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.web.mixing.MixView;
import org.wetside.web.mixing.TemperView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page that mixes and tempers.
 *
 * @param sheet the sheet
 * @param mix what was asked about mixing
 * @param temper what was asked about tempering
 * @param mixed the answer about mixing
 * @param tempered the answer about tempering
 * @param noAnswer why there is no answer, with the nearest
 * @param bottles letter and contents of what can be mixed from
 */
public record MixPage(
    Sheet sheet,
    FilledForm mix,
    FilledForm temper,
    Optional<MixView> mixed,
    Optional<TemperView> tempered,
    Optional<String> noAnswer,
    Map<String, String> bottles) {

  /** Concentrates and stocks to choose from, and none. */
  static Map<String, String> choices(List<Bottle> onShelf) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("", "not from the shelf");
    for (Bottle bottle : onShelf) {
      if (bottle.label().role() != BottleRole.WORKING) {
        words.put(
            bottle.label().letter(), bottle.label().letter() + ": " + bottle.label().contents());
      }
    }
    return words;
  }

  /** The contents of the chosen bottle; empty when none was chosen. */
  public String chosen() {
    String words = bottles.getOrDefault(mix.value("bottle"), "");
    int colon = words.indexOf(": ");
    return mix.isBlank("bottle") || colon < 0 ? "" : words.substring(colon + 2);
  }
}
