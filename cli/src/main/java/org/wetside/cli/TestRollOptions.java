package org.wetside.cli;

import org.jspecify.annotations.Nullable;
import org.wetside.web.testroll.TestRollQuery;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a test roll is planned from. */
final class TestRollOptions {
  @Parameters(arity = "0..1", paramLabel = "FILM", description = "the film, in your words")
  @Nullable String film;

  @Option(names = "--ei", paramLabel = "EI", description = "exposure index the meter is set to")
  @Nullable String index;

  @Option(
      names = "--metered",
      paramLabel = "PAIR",
      description = "what it says for the card, for example 1/60@f8")
  @Nullable String metered;

  @Option(
      names = "--middle",
      paramLabel = "TIME",
      description = "time of the second piece, for example 8min")
  @Nullable String middle;

  @Option(names = "--developer", paramLabel = "NAME", description = "in your words")
  @Nullable String developer;

  @Option(names = "--dilution", paramLabel = "D", description = "stock, 1+1 or a letter")
  @Nullable String dilution;

  @Option(names = "--temp", paramLabel = "TEMP", description = "of the developer")
  @Nullable String temp;

  @Option(names = "--vessel", paramLabel = "V", description = "small, large, rotary or tray")
  @Nullable String vessel;

  @Option(names = "--frames", paramLabel = "N", description = "on the roll; 36 when not said")
  @Nullable String frames;

  @Option(
      names = "--fastest",
      paramLabel = "SPEED",
      description = "fastest shutter speed; 1/1000 when not said")
  @Nullable String fastest;

  @Option(
      names = "--slowest",
      paramLabel = "SPEED",
      description = "slowest shutter speed; 1/2 when not said, and not longer")
  @Nullable String slowest;

  @Option(names = "--widest", paramLabel = "F", description = "widest aperture; f/2 when not said")
  @Nullable String widest;

  @Option(
      names = "--smallest",
      paramLabel = "F",
      description = "smallest aperture; f/16 when not said")
  @Nullable String smallest;

  /** The same, to be read or sent. */
  TestRollQuery query() {
    return new TestRollQuery(
        film, index, metered, middle, developer, dilution, temp, vessel, frames, fastest, slowest,
        widest, smallest);
  }

  /** Whether anything was said. */
  boolean areSaid() {
    for (String one :
        new String[] {
          film, index, metered, middle, developer, dilution, temp, vessel, frames, fastest, slowest,
          widest, smallest
        }) {
      if (one != null) {
        return true;
      }
    }
    return false;
  }
}
