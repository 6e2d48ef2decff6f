package org.wetside.web.trial;

import java.time.Duration;
import java.util.Locale;
import java.util.OptionalDouble;
import org.wetside.core.quantity.Units;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialEnd;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialOutcome;

/** What came of a test, in one sentence. */
final class TestWords {
  private final Units units;

  TestWords(Units units) {
    this.units = units;
  }

  String of(Trial trial) {
    if (trial.end().isEmpty()) {
      return trial.kind().title() + " of " + subject(trial) + " runs.";
    }
    TrialEnd end = trial.end().get();
    TrialOutcome outcome = end.outcome();
    if (outcome instanceof TrialOutcome.NotJudged not) {
      return "Nothing is said of " + subject(trial) + ": " + not.reason() + ".";
    }
    if (outcome instanceof TrialOutcome.NotComparable not) {
      return "Not comparable: "
          + String.join("; ", not.why())
          + ". The clip cleared in "
          + clock(end.took())
          + "; make a baseline in fresh solution.";
    }
    if (outcome instanceof TrialOutcome.BaselineMade) {
      return "Baseline made for "
          + subject(trial)
          + ": "
          + trial.clip().map(this::clip).orElse("the clip")
          + " clears in "
          + clock(end.took())
          + ".";
    }
    return outcome instanceof TrialOutcome.Passed passed
        ? passed(trial, end, passed.timesBaseline())
        : failed(trial, end, ((TrialOutcome.Failed) outcome).timesBaseline());
  }

  private static String passed(Trial trial, TrialEnd end, OptionalDouble times) {
    return switch (trial.kind()) {
      case CLEARING ->
          capital(subject(trial)) + " fixes: clear in " + clock(end.took()) + times(times) + ".";
      case LEADER -> capital(subject(trial)) + " develops: the leader turned black.";
      case IODIDE -> "Nothing stays: " + subject(trial) + " is not exhausted.";
      case RESIDUE -> "No stain on " + subject(trial) + ": no thiosulfate that the eye can tell.";
    };
  }

  private static String failed(Trial trial, TrialEnd end, OptionalDouble times) {
    return switch (trial.kind()) {
      case CLEARING ->
          capital(subject(trial))
              + " is spent: "
              + clock(end.took())
              + times(times)
              + ". Do not fix in it.";
      case LEADER ->
          capital(subject(trial)) + " does not develop as it should. Do not develop in it.";
      case IODIDE -> "A precipitate stays: " + subject(trial) + " is exhausted. Do not fix in it.";
      case RESIDUE -> "The drop left a stain: wash " + subject(trial) + " on, and test again.";
    };
  }

  private static String times(OptionalDouble times) {
    return times.isEmpty()
        ? ""
        : String.format(Locale.ROOT, ", %.2f × the baseline", times.getAsDouble());
  }

  String clip(ClipWish clip) {
    return clip.film() + " in " + clip.dilution() + " at " + units.words(clip.temperature());
  }

  static String subject(Trial trial) {
    return trial.kind() == TrialKind.RESIDUE
        ? String.join(", ", trial.rolls())
        : "bottle " + trial.bottle();
  }

  static String clock(Duration time) {
    long tenths = Math.round(time.toMillis() / 100.0);
    long seconds = tenths / 10;
    String whole = String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    return tenths % 10 == 0 ? whole : whole + "." + tenths % 10;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
