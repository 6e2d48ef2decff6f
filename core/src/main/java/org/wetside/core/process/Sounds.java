package org.wetside.core.process;

/** Tones that belong to no cue of the plan. */
public final class Sounds {
  /** One tick of a count-in: short, high, unlike any act. */
  public static final Tone COUNT_IN = Tone.of(1319, 30);

  /** "Sound is alive": the softest of all, every {@link #ALIVE_EVERY_SECONDS}. */
  public static final Tone ALIVE = Tone.of(262, 25);

  /** Something went wrong: up and down like nothing else. */
  public static final Tone MISHAP = Tone.of(880, 120, 392, 120, 880, 120, 392, 240);

  /** How often the tick comes that says the sound is alive. */
  public static final int ALIVE_EVERY_SECONDS = 15;

  /** Loudness of an act, of full scale. */
  public static final double LOUD = 0.25;

  /** Loudness of a count-in and of the alive tick, of full scale. */
  public static final double SOFT = 0.08;

  /** How long a note takes to come and to go, so that it does not click. */
  public static final int EDGE_MILLISECONDS = 8;

  /** From the end of a tone to the beginning of the words. */
  public static final int WORDS_AFTER_MILLISECONDS = 120;

  private Sounds() {}
}
