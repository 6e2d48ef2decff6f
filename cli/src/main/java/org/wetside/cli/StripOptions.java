package org.wetside.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.web.strip.StripBody;
import picocli.CommandLine.Option;

/** What was done to a strip and how it was read, with {@code --add} and {@code --again}. */
final class StripOptions {
  @Option(names = "--film", paramLabel = "FILM", description = "its name")
  @Nullable String film;

  @Option(names = "--developer", paramLabel = "DEVELOPER", description = "its name")
  @Nullable String developer;

  @Option(names = "--dilution", paramLabel = "DILUTION", description = "stock, 1+1 or a letter")
  @Nullable String dilution;

  @Option(names = "--minutes", paramLabel = "TIME", description = "developed for, 9:40 or 9.5")
  @Nullable String minutes;

  @Option(names = "--temp", paramLabel = "TEMPERATURE", description = "of the developer, 20C")
  @Nullable String temp;

  @Option(names = "--vessel", paramLabel = "VESSEL", description = "small, large, rotary or tray")
  @Nullable String vessel;

  @Option(names = "--day", paramLabel = "DATE", description = "developed on, 2026-01-10")
  @Nullable String day;

  @Option(
      names = "--light",
      paramLabel = "LIGHT",
      description = "calibrated, estimated, relative or camera; only the first gives an ISO speed")
  @Nullable String light;

  @Option(
      names = "--columns",
      paramLabel = "WHAT",
      description = "logH, step or stops, where the file has no header")
  @Nullable String columns;

  @Option(
      names = "--clear",
      paramLabel = "LOGH",
      description = "for steps: log10 lx·s with nothing in the way")
  @Nullable String clear;

  @Option(
      names = "--tablet",
      paramLabel = "TABLET",
      description = "for steps: a tablet that is written down, whose densities are taken")
  @Nullable String tablet;

  @Option(
      names = "--densities",
      paramLabel = "LIST",
      description = "for steps, in place of it: the tablet's densities, \"0.05, 0.20, 0.35\"")
  @Nullable String densities;

  @Option(names = "--metered", paramLabel = "EI", description = "for stops: the metered index")
  @Nullable String metered;

  @Option(
      names = "--base-fog",
      paramLabel = "DENSITY",
      description = "of clear film, 0 for net densities; else found where the first steps are flat")
  @Nullable String baseFog;

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      description = "what read the densities: one that is written down, with its limits")
  @Nullable String instrument;

  @Option(
      names = "--calibrated-on",
      paramLabel = "DATE",
      description = "day of its calibration; else the newest")
  @Nullable String calibratedOn;

  @Option(names = "--note", paramLabel = "TEXT", description = "any words")
  @Nullable String note;

  StripBody read(Path readings) {
    return new StripBody(
        film,
        developer,
        dilution,
        minutes,
        temp,
        vessel,
        day,
        light,
        columns,
        CsvFile.text(readings, "logH,density, step,density or stops,density"),
        clear,
        densities,
        metered,
        baseFog,
        note,
        tablet,
        instrument,
        calibratedOn);
  }

  boolean areSaid() {
    for (String one :
        new String[] {
          film,
          developer,
          dilution,
          minutes,
          temp,
          vessel,
          day,
          light,
          columns,
          clear,
          tablet,
          densities,
          metered,
          baseFog,
          instrument,
          calibratedOn,
          note
        }) {
      if (one != null) {
        return true;
      }
    }
    return false;
  }
}
