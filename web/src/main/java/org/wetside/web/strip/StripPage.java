package org.wetside.web.strip;

import java.util.List;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.KeptStrip;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one strip.
 *
 * @param sheet the sheet
 * @param kept what was done and read
 * @param answer in words
 * @param wide its curve for a wide sheet
 * @param narrow the same for a narrow one
 * @param rows its results
 * @param lines its readings
 * @param baseFog base plus fog and how it is known
 * @param advice what is to be read again; empty when nothing is
 * @param with with what it was exposed and read
 * @param seed of the resamples behind the bands
 * @param familyPath where it is read together with its other times; empty without any
 */
public record StripPage(
    Sheet sheet,
    KeptStrip kept,
    StripAnswer answer,
    CurveDrawing wide,
    CurveDrawing narrow,
    List<ResultRow> rows,
    List<ReadLine> lines,
    String baseFog,
    String advice,
    MadeWithText with,
    long seed,
    String familyPath) {
  /** What was done. */
  public FilmStrip strip() {
    return kept.strip();
  }

  /** Whether the band of the curve is drawn. */
  public boolean banded() {
    return !wide.edges().isEmpty();
  }

  /** The developer with its dilution. */
  public String developer() {
    return StripText.developer(strip());
  }

  /** Development time as {@code 9:40}. */
  public String time() {
    return StripText.time(strip());
  }

  /** Whether the places are steps or stops, which then have a column of their own. */
  public boolean hasPlaces() {
    return lines.stream().anyMatch(line -> !line.place().isEmpty());
  }

  /** Whether any step was read more than once. */
  public boolean hasRepeats() {
    return lines.stream().anyMatch(line -> line.read().indexOf(',') >= 0);
  }

  /** Whether anything is to be said of single steps. */
  public boolean hasRemarks() {
    return lines.stream().anyMatch(line -> !line.remark().isEmpty());
  }
}
