package org.wetside.web.times;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.times.OwnLine;
import org.wetside.app.times.TypeLeaflet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.web.page.FilledForm;

/**
 * The grid of a leaflet as a form: temperatures across, dilutions or indexes down.
 *
 * @param form what was typed; fields are named {@code grid-temp-0}, {@code grid-head-0}, {@code
 *     grid-minutes-0-0} and {@code grid-film} …
 */
public record LeafletGrid(FilledForm form) {
  private static final List<String> USUAL = List.of("65F", "68F", "70F", "72F", "75F");
  private static final int USUAL_ROWS = 3;
  private static final int MOST = 12;

  /** A grid nobody has touched, with the film and developer of the question in it. */
  static LeafletGrid fresh(FilledForm ask) {
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < USUAL.size(); i++) {
      values.put("grid-temp-" + i, USUAL.get(i));
    }
    values.put("grid-head-0", "stock");
    values.put("grid-film", ask.value("film"));
    values.put("grid-developer", ask.value("developer"));
    values.put("grid-ei", ask.value("ei"));
    values.put("grid-vessel", "small");
    return new LeafletGrid(FilledForm.of(values));
  }

  /** Columns of temperatures. */
  public int columns() {
    return count("grid-temp-", USUAL.size());
  }

  /** Rows. */
  public int rows() {
    return count("grid-head-", USUAL_ROWS);
  }

  private int count(String prefix, int least) {
    int found = 0;
    while (found < MOST && form.values().containsKey(prefix + found)) {
      found++;
    }
    return Math.max(found, least);
  }

  /** The same grid with one more temperature or row. */
  LeafletGrid with(String more) {
    Map<String, String> values = new LinkedHashMap<>(form.values());
    if (more.equals("row")) {
      values.put("grid-head-" + rows(), "");
    } else {
      values.put("grid-temp-" + columns(), "");
    }
    for (int row = 0; row < rows(); row++) {
      values.putIfAbsent("grid-head-" + row, "");
    }
    for (int column = 0; column < columns(); column++) {
      values.putIfAbsent("grid-temp-" + column, "");
    }
    return new LeafletGrid(new FilledForm(values, Map.of()));
  }

  /** The other scale under a typed temperature; empty when it cannot be read. */
  public String otherScale(int column) {
    String typed = form.value("grid-temp-" + column);
    try {
      Temperature temperature = Temperature.parse(typed);
      return typed.toLowerCase(java.util.Locale.ROOT).contains("f")
          ? Units.METRIC.words(temperature)
          : Math.round(temperature.fahrenheit()) + " °F";
    } catch (BadValueException notReadable) {
      return "";
    }
  }

  /** What is wrong with a field; null when nothing is. */
  public @Nullable String wrong(String name) {
    return form.message(name);
  }

  /** What is wrong with cells of the grid, for the list under it. */
  public List<String> messages() {
    return form.messages().entrySet().stream()
        .filter(message -> message.getKey().matches("grid-(temp|head|minutes)-[\\d-]+"))
        .map(Map.Entry::getValue)
        .distinct()
        .toList();
  }

  TypeLeaflet.Leaflet leaflet() {
    List<String> temperatures = new ArrayList<>();
    for (int column = 0; column < columns(); column++) {
      temperatures.add(form.value("grid-temp-" + column));
    }
    List<TypeLeaflet.Row> rows = new ArrayList<>();
    for (int row = 0; row < rows(); row++) {
      List<String> minutes = new ArrayList<>();
      for (int column = 0; column < columns(); column++) {
        minutes.add(form.value("grid-minutes-" + row + "-" + column));
      }
      rows.add(new TypeLeaflet.Row(form.value("grid-head-" + row), minutes));
    }
    TypeLeaflet.Down down =
        form.value("grid-down").equals("indexes")
            ? TypeLeaflet.Down.INDEXES
            : TypeLeaflet.Down.DILUTIONS;
    return new TypeLeaflet.Leaflet(common(), down, temperatures, rows);
  }

  private OwnLine common() {
    return new OwnLine(
        form.value("grid-film"),
        form.value("grid-developer"),
        form.value("grid-dilution"),
        form.value("grid-ei"),
        "",
        "",
        form.value("grid-vessel"),
        form.value("grid-agitation"),
        "",
        form.value("grid-source"));
  }
}
