package org.wetside.web.strip;

import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.StripDraft;
import org.wetside.app.curves.StripReader;
import org.wetside.app.density.Densitometry;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.strip.FilmStrip;

/**
 * A strip as it is written down, everything as text; null is not said.
 *
 * @param film name; required
 * @param developer name; required
 * @param dilution stock, 1+1 or a letter
 * @param minutes development time, 9:40 or 9.5; required
 * @param temp temperature of the developer with its unit
 * @param vessel small, large, rotary or tray
 * @param day developed on, year-month-day
 * @param light calibrated, estimated, relative or camera; required
 * @param columns logH, step or stops, where the readings have no header; logH when not said
 * @param readings CSV: a place and a density a line; required
 * @param clear log10 lx·s where nothing of the tablet is in the way, for steps
 * @param tablet densities of the tablet's steps in their order, for steps
 * @param index that was metered, for stops
 * @param baseFog density of base plus fog, 0 for net densities; found in the first steps when not
 *     said
 * @param note any words
 * @param keptTablet name of a step tablet that is written down, for steps, in place of its
 *     densities
 * @param instrument name of what read the densities, with its limits
 * @param calibratedOn day of the calibration it read by; its newest when not said
 */
public record StripBody(
    @Nullable String film,
    @Nullable String developer,
    @Nullable String dilution,
    @Nullable String minutes,
    @Nullable String temp,
    @Nullable String vessel,
    @Nullable String day,
    @Nullable String light,
    @Nullable String columns,
    @Nullable String readings,
    @Nullable String clear,
    @Nullable String tablet,
    @Nullable String index,
    @Nullable String baseFog,
    @Nullable String note,
    @Nullable String keptTablet,
    @Nullable String instrument,
    @Nullable String calibratedOn) {
  /**
   * The strip.
   *
   * @param densitometry tablets and instruments that may be named
   * @throws BadValueException naming everything that is wrong
   */
  public FilmStrip strip(Densitometry densitometry) {
    StripReader reader = new StripReader(Units.METRIC, densitometry);
    return reader
        .read(
            new StripDraft(
                text(film),
                text(developer),
                text(dilution),
                text(minutes),
                text(temp),
                text(vessel),
                text(day),
                text(light),
                columns == null ? "logH" : columns,
                text(readings),
                text(clear),
                text(tablet),
                text(index),
                text(baseFog),
                text(note),
                text(keptTablet),
                text(instrument),
                text(calibratedOn)))
        .orElseThrow(
            () ->
                new BadValueException(
                    "curve",
                    reader.problems().size() + " things wrong",
                    String.join("; ", reader.problems().values())));
  }

  private static String text(@Nullable String said) {
    return said == null ? "" : said;
  }
}
