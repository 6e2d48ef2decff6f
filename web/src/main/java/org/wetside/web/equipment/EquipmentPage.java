package org.wetside.web.equipment;

import java.util.List;
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

  /** A tank in words. */
  public record TankLine(String name, String vessel, String takes, String holds) {}

  /** A thermometer in words. */
  public record ThermometerLine(String name, String offset, String found) {}
}
