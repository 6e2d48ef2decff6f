package org.wetside.app.curves;

/**
 * A strip as it is typed; empty is not said.
 *
 * @param film name; required
 * @param developer name; required
 * @param dilution {@code stock}, {@code 1+1} or a letter
 * @param minutes development time, {@code 9:40} or {@code 9.5}; required
 * @param temp temperature of the developer
 * @param vessel small, large, rotary or tray
 * @param day developed on, year-month-day
 * @param light calibrated, estimated, relative or camera
 * @param columns logH, step or stops, where the readings have no header
 * @param readings two numbers a line; required
 * @param clear log10 lx·s where nothing of the tablet is in the way, for steps
 * @param tablet densities of the tablet's steps in their order, for steps
 * @param index that was metered, for stops
 * @param baseFog density of base plus fog, 0 for net densities; empty to find it
 * @param note any words
 * @param keptTablet name of a step tablet that is written down, whose densities fill the steps
 * @param instrument name of what read the densities, with its limits
 * @param calibratedOn day of the calibration it read by; empty for its newest
 */
public record StripDraft(
    String film,
    String developer,
    String dilution,
    String minutes,
    String temp,
    String vessel,
    String day,
    String light,
    String columns,
    String readings,
    String clear,
    String tablet,
    String index,
    String baseFog,
    String note,
    String keptTablet,
    String instrument,
    String calibratedOn) {
  /** Without a tablet or an instrument that is written down. */
  public StripDraft(
      String film,
      String developer,
      String dilution,
      String minutes,
      String temp,
      String vessel,
      String day,
      String light,
      String columns,
      String readings,
      String clear,
      String tablet,
      String index,
      String baseFog,
      String note) {
    this(
        film, developer, dilution, minutes, temp, vessel, day, light, columns, readings, clear,
        tablet, index, baseFog, note, "", "", "");
  }
}
