package org.wetside.web.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that stands on a run sheet.
 *
 * @param run number of the run; null before the load was brought to the Bench
 * @param load number of the load; null when the run came from none
 * @param address what the code on the sheet leads to
 * @param name of the load
 * @param tank name of the tank
 * @param rolls from the top of the tank to its bottom
 * @param process name of the process
 * @param developer name
 * @param dilution as it is written on a bottle
 * @param temperatureC of the developer; null when not said
 * @param developmentSeconds from the tank being full to the next pour
 * @param standing how that time is known
 * @param source where it stands
 * @param startAt the first pour
 * @param startKnown whether the first pour has happened; otherwise all moments are for an assumed
 *     one
 * @param endAt when the film hangs
 * @param baths what has to be in hand
 * @param checks what is looked at before the first pour and not answered yet
 * @param steps the run, bath by bath
 * @param care cautions, at the bath they concern
 * @param zone time zone of the clock times that are printed
 * @param printedAt when the sheet was made
 * @param demo whether everything on it is invented
 */
public record SheetView(
    @Nullable Long run,
    @Nullable Long load,
    String address,
    String name,
    String tank,
    List<SheetRoll> rolls,
    String process,
    String developer,
    String dilution,
    @Nullable Double temperatureC,
    double developmentSeconds,
    String standing,
    String source,
    String startAt,
    boolean startKnown,
    String endAt,
    List<SheetBath> baths,
    List<SheetCheck> checks,
    List<SheetStep> steps,
    List<SheetCare> care,
    String zone,
    String printedAt,
    boolean demo) {

  /** A roll at its place. */
  public record SheetRoll(String number, String film, String place) {}

  /**
   * A bath that is made ready before the first pour.
   *
   * @param hatch the pattern it is drawn with
   * @param word what it does
   * @param bottle letter; null for water and where nobody said
   * @param volumeMl liquid in the tank; null when not said
   * @param concentrateMl what of it comes from the bottle; null when it is not diluted, or not
   *     known
   * @param lowC coolest it may be; null when nobody said
   * @param highC warmest it may be; null when nobody said
   * @param afterUse where it goes: discard, or back to its bottle
   */
  public record SheetBath(
      String hatch,
      String word,
      @Nullable String bottle,
      @Nullable Double volumeMl,
      @Nullable Double concentrateMl,
      @Nullable Double lowC,
      @Nullable Double highC,
      String afterUse) {}

  /**
   * A check.
   *
   * @param closing whether it is felt or seen as the tank is closed
   * @param text what is asked
   */
  public record SheetCheck(boolean closing, String text) {}

  /**
   * One bath of the run.
   *
   * @param hatch the pattern it is drawn with
   * @param word what it does
   * @param bottle letter; null for water, light, and where nobody said
   * @param wet whether it is a liquid
   * @param developing whether its time may not be stretched
   * @param dark whether the lid stays on
   * @param pourInSeconds the pour
   * @param seconds from the tank being full to the next pour
   * @param beginAt the pour begins
   * @param fullAt the tank is full
   * @param drainAt the drain begins
   * @param endAt the next pour begins
   * @param agitation in one line
   * @param bouts agitation by the clock, the one at the pour left out
   * @param lowC coolest it may be; null when nobody said
   * @param highC warmest it may be; null when nobody said
   * @param afterUse where it goes: discard, or back to its bottle
   */
  public record SheetStep(
      String hatch,
      String word,
      @Nullable String bottle,
      boolean wet,
      boolean developing,
      boolean dark,
      double pourInSeconds,
      double seconds,
      String beginAt,
      String fullAt,
      String drainAt,
      String endAt,
      String agitation,
      List<String> bouts,
      @Nullable Double lowC,
      @Nullable Double highC,
      String afterUse) {}

  /**
   * A caution.
   *
   * @param baths the baths it is shown for: their words
   * @param text hazard and advice in one line
   * @param source what it is cited from
   * @param standing how it is known
   */
  public record SheetCare(List<String> baths, String text, String source, String standing) {}
}
