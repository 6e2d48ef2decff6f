package org.wetside.core.development;

import java.time.Duration;
import java.util.List;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Stops;

/** Something one must know beside an estimate; worded at the edge. */
public sealed interface TimeWarning
    permits TimeWarning.FormerCoating,
        TimeWarning.OtherCoatings,
        TimeWarning.ShortInHandTank,
        TimeWarning.SourcesDisagree,
        TimeWarning.FormatMatters,
        TimeWarning.RestsOnGuess,
        TimeWarning.LongerForContrast,
        TimeWarning.RotaryPracticeDiffers,
        TimeWarning.CountsAsMakers,
        TimeWarning.OffOwnIndex,
        TimeWarning.Note {
  /** The time belongs to a coating that is no longer made. */
  record FormerCoating(Film film) implements TimeWarning {}

  /** Coatings of the same name exist whose times are not used. */
  record OtherCoatings(Film taken, List<Film> others) implements TimeWarning {
    public OtherCoatings {
      others = List.copyOf(others);
    }
  }

  /** Below the time under which a tank turned by hand may develop unevenly. */
  record ShortInHandTank(Duration time, Duration limit) implements TimeWarning {}

  /** Two sources whose bands do not touch. */
  record SourcesDisagree(Candidate other, Duration apart) implements TimeWarning {}

  /** Format not given, and it makes a difference. */
  record FormatMatters(List<Candidate> byFormat) implements TimeWarning {
    public FormatMatters {
      byFormat = List.copyOf(byFormat);
    }
  }

  /** Part of the way is a guess. */
  record RestsOnGuess(BasisStep step) implements TimeWarning {}

  /** The maker calls this index normal processing; this much longer would raise contrast. */
  record LongerForContrast(Duration time) implements TimeWarning {}

  /** Common practice takes more off for rotary than the published pairs do. */
  record RotaryPracticeDiffers(Duration low, Duration high) implements TimeWarning {}

  /** The index asked for is the user's own, in use; the time is that for the maker's index. */
  record CountsAsMakers(ExposureIndex own, ExposureIndex makers) implements TimeWarning {}

  /**
   * The user's own index is in use, and the film was exposed at another.
   *
   * @param asked what it was exposed at
   * @param own the user's own
   * @param off stops from own to asked; above 0 there is less light than the shadows need
   */
  record OffOwnIndex(ExposureIndex asked, ExposureIndex own, Stops off) implements TimeWarning {}

  /** A remark that stands beside the row; of an own entry, how its source says to agitate. */
  record Note(String text, boolean aboutAgitation) implements TimeWarning {}
}
