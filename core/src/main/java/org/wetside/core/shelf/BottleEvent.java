package org.wetside.core.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;

/** What can happen to a bottle. */
public sealed interface BottleEvent {
  /** The word shown, and stored as its kind. */
  String word();

  /** First filled: mixed, or bought. Always the first line. */
  record Filled(Volume volume) implements BottleEvent {
    @Override
    public String word() {
      return "filled";
    }
  }

  /** Opened for the first time, that day. */
  record Opened(LocalDate day) implements BottleEvent {
    @Override
    public String word() {
      return "opened";
    }
  }

  /**
   * Taken out by a run, for film.
   *
   * @param volume what was poured out
   * @param film the rolls it was for; empty when the same run has already named them
   */
  record Used(Volume volume, List<FilmUse> film) implements BottleEvent {
    public Used {
      film = List.copyOf(film);
    }

    @Override
    public String word() {
      return "used";
    }
  }

  /**
   * The end of a run was taken back: what {@link Used} did is undone.
   *
   * @param volume what is in the bottle again
   * @param film the rolls that did not go through after all
   */
  record UseUndone(Volume volume, List<FilmUse> film) implements BottleEvent {
    public UseUndone {
      film = List.copyOf(film);
    }

    @Override
    public String word() {
      return "use taken back";
    }
  }

  /** Taken out by hand, for a mix, a test or another bottle. */
  record Taken(Volume volume) implements BottleEvent {
    @Override
    public String word() {
      return "taken out";
    }
  }

  /** Poured back after use. */
  record PouredBack(Volume volume) implements BottleEvent {
    @Override
    public String word() {
      return "poured back";
    }
  }

  /**
   * Fresh solution or replenisher added, after used solution was taken out or not.
   *
   * @param out used solution taken out first; zero as a rule
   * @param added fresh solution
   */
  record ToppedUp(Volume out, Volume added) implements BottleEvent {
    @Override
    public String word() {
      return "topped up";
    }
  }

  /**
   * Tried out.
   *
   * @param test which test
   * @param passed what it showed
   * @param clearing how long a clip took; empty when it was judged by eye
   */
  record Tested(BathTest test, boolean passed, Optional<Clearing> clearing) implements BottleEvent {
    @Override
    public String word() {
      return test.word() + (passed ? " passed" : " failed");
    }
  }

  /** Marked by a mishap; the note says why. */
  record Marked(BottleMark mark) implements BottleEvent {
    @Override
    public String word() {
      return mark.word();
    }
  }

  /** A mark was answered by a person, or what made it was taken back; the note says how. */
  record MarkLifted(BottleMark mark) implements BottleEvent {
    @Override
    public String word() {
      return mark.liftedWord();
    }
  }

  /** The ledger put right after looking: that much is really in the bottle. */
  record Corrected(Volume left) implements BottleEvent {
    @Override
    public String word() {
      return "corrected";
    }
  }

  /** The second of two fixers has become the first. */
  record MovedDown() implements BottleEvent {
    @Override
    public String word() {
      return "moved down";
    }
  }

  /** Emptied and off the shelf. */
  record Discarded() implements BottleEvent {
    @Override
    public String word() {
      return "discarded";
    }
  }

  /**
   * Rolls of its recall list were fixed again elsewhere; may follow {@link Discarded}.
   *
   * @param rolls their numbers; an empty one stands for one roll whose number is not known
   */
  record Refixed(List<String> rolls) implements BottleEvent {
    public Refixed {
      rolls = List.copyOf(rolls);
    }

    @Override
    public String word() {
      return "rolls fixed again";
    }
  }
}
