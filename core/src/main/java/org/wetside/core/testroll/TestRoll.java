package org.wetside.core.testroll;

import java.util.Optional;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;

/**
 * What is measured on one roll, and how it is exposed for that.
 *
 * @param film in the user's words, at most 80 characters; empty when it was not said
 * @param index that the meter is set to; empty when it was not said
 * @param developer in the user's words, at most 80 characters; empty when it was not said
 * @param dilution of the developer
 * @param temperature of the developer; empty when it was not said
 * @param vessel that the pieces are developed in
 * @param plan of its frames
 */
public record TestRoll(
    String film,
    Optional<ExposureIndex> index,
    String developer,
    Dilution dilution,
    Optional<Temperature> temperature,
    Vessel vessel,
    RollPlan plan) {
  private static final int LONGEST_NAME = 80;

  /**
   * Strips the names.
   *
   * @throws BadValueException when one is too long
   */
  public TestRoll {
    film = named("film", film);
    developer = named("developer", developer);
  }

  private static String named(String thing, String typed) {
    String bare = typed.strip();
    if (bare.length() > LONGEST_NAME) {
      throw new BadValueException(thing, bare, "at most " + LONGEST_NAME + " characters");
    }
    return bare;
  }

  /**
   * The roll as it can be kept: its curves are of a film, in a developer, by a meter.
   *
   * @throws BadValueException naming what was not said
   */
  public TestRoll complete() {
    require("film", !film.isEmpty());
    require("exposure index", index.isPresent());
    require("developer", !developer.isEmpty());
    return this;
  }

  private static void require(String thing, boolean said) {
    if (!said) {
      throw new BadValueException(thing, "", "it is needed where a test roll is kept");
    }
  }

  /** The developer with its dilution, as far as they were said. */
  public String bath() {
    return dilution.equals(Dilution.notStated()) ? developer : developer + " " + dilution.label();
  }
}
