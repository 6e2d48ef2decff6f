package org.wetside.core.learning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Invented users who judge rolls, from a seed. */
final class Users {
  /** How far one ln factor is misread (the figure the model is held to). */
  static final double READING_SD = 0.05;

  /** The model's scatter. */
  static final Scatter SCATTER = new Scatter(0.10, 0.08, 0.04);

  private static final Instant FIRST = Instant.parse("2026-01-01T20:00:00Z");

  private final SplittableRandom random;

  Users(long seed) {
    random = new SplittableRandom(seed);
  }

  double normal(double sd) {
    return sd * random.nextGaussian();
  }

  /** Rolls of one film whose truth shifts once, after so many rolls. */
  List<RollSeen> rolls(double truth, int count, int shiftAfter, double shift) {
    List<RollSeen> rolls = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double really = truth + (i >= shiftAfter ? shift : 0) + normal(SCATTER.roll());
      rolls.add(roll("A", i, really + normal(READING_SD)));
    }
    return rolls;
  }

  static RollSeen roll(String film, int day, double value) {
    return new RollSeen(
        film + "-" + day,
        new FilmInDeveloper(film, "soup"),
        FIRST.plusSeconds(86_400L * day),
        value,
        READING_SD);
  }
}
