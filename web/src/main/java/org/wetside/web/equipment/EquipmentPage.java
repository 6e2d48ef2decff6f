package org.wetside.web.equipment;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the Equipment page.
 *
 * @param sheet the sheet
 * @param tanks the tanks
 * @param thermometers the thermometers
 * @param tank the form of a tank
 * @param thermometer the form of a thermometer
 */
public record EquipmentPage(
    Sheet sheet,
    List<TankLine> tanks,
    List<ThermometerLine> thermometers,
    FilledForm tank,
    FilledForm thermometer) {

  /** The units as chosen now. */
  public FilledForm units() {
    return FilledForm.of(Map.of("scale", sheet.scaleWord(), "measure", sheet.measureWord()));
  }

  /** Scales to choose from. */
  public Map<String, String> scales() {
    Map<String, String> scales = new LinkedHashMap<>();
    scales.put("celsius", "°C");
    scales.put("fahrenheit", "°F");
    return scales;
  }

  /** Measures to choose from. */
  public Map<String, String> measures() {
    Map<String, String> measures = new LinkedHashMap<>();
    measures.put("millilitres", "mL");
    measures.put("us_fluid_ounces", "US fluid ounces");
    return measures;
  }

  /** The thermometers whose offset nobody knows, by name; empty when there is none. */
  public String neverCompared() {
    return thermometers.stream()
        .filter(one -> !one.compared())
        .map(ThermometerLine::name)
        .collect(Collectors.joining(", "));
  }

  /** A tank in words. */
  public record TankLine(String name, String vessel, String takes, String holds) {
    /** Its name as a part of an address. */
    public String inPath() {
      return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
  }

  /** A thermometer in words. */
  public record ThermometerLine(String name, boolean compared, String offset, String found) {}
}
