package org.wetside.app.screens;

import java.time.Instant;

/** What is known of whoever shows a key. */
public sealed interface Known {
  /**
   * A screen that is let in.
   *
   * @param screen the screen
   */
  record LetIn(Screen screen) implements Known {}

  /**
   * A screen that was shut out again.
   *
   * @param name what it was called
   * @param at when
   */
  record Removed(String name, Instant at) implements Known {}

  /** No key of this home. */
  record Unknown() implements Known {}
}
