package org.wetside.app.checks;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/**
 * What is about to be poured, as far as checks ask.
 *
 * @param run the opened run; 0 while there is only a load
 * @param load the load it comes from
 * @param tank name of the tank
 * @param developer what the time was found for
 * @param dilution how it is made, as written
 * @param rolls numbers of the rolls
 * @param steps in order, with their bottles and bands
 * @param taken for each step what its bottle has to give
 * @param readings temperatures taken so far, in order
 * @param now the moment of asking
 * @param units in which it is worded
 */
public record Pour(
    long run,
    Optional<Long> load,
    String tank,
    String developer,
    String dilution,
    List<String> rolls,
    List<Step> steps,
    List<Optional<Volume>> taken,
    List<Read> readings,
    Instant now,
    Units units) {
  public Pour {
    rolls = List.copyOf(rolls);
    steps = List.copyOf(steps);
    taken = List.copyOf(taken);
    readings = List.copyOf(readings);
  }

  /**
   * A temperature that was read.
   *
   * @param step index of the bath
   * @param raw as the thermometer showed it
   * @param corrected by what is known of the thermometer
   * @param thermometer its name; empty when not said
   */
  public record Read(int step, Temperature raw, Temperature corrected, String thermometer) {}

  /** How a bath is called: its word, and its bottle where it has one. */
  String bath(int step) {
    Step one = steps.get(step);
    return one.kind().heading() + one.bottle().map(letter -> ", bottle " + letter).orElse("");
  }
}
