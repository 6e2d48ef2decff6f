package org.wetside.app.screens;

import java.time.Instant;

/** What came of showing a code. */
public sealed interface PairOutcome {
  /**
   * The screen is let in.
   *
   * @param screen the screen
   * @param key what it shows from now on: 256 bits of chance, kept nowhere else
   */
  record Paired(Screen screen, String key) implements PairOutcome {}

  /**
   * The code is not the one that is shown.
   *
   * @param triesLeft how often another may be tried before the code ends
   */
  record Wrong(int triesLeft) implements PairOutcome {}

  /** The code has let a screen in already. */
  record Used() implements PairOutcome {}

  /**
   * The code has ended, or a newer one has taken its place.
   *
   * @param at when
   */
  record Expired(Instant at) implements PairOutcome {}

  /** The code ended because wrong ones were tried too often. */
  record TooManyTries() implements PairOutcome {}

  /** No code is shown anywhere. */
  record NoneShown() implements PairOutcome {}
}
