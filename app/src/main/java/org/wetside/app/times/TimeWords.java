package org.wetside.app.times;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.wetside.core.development.Candidate;
import org.wetside.core.development.ClipTestPlan;
import org.wetside.core.development.Refusal;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Units;

/** Warnings and refusals in words; the only place where they are worded. */
public final class TimeWords {
  private TimeWords() {}

  /** Minutes and seconds, for example {@code 6:45}. */
  public static String clock(Duration time) {
    long seconds = Math.round(time.toMillis() / 1000.0);
    return seconds / 60 + (seconds % 60 < 10 ? ":0" : ":") + seconds % 60;
  }

  /** A warning as a sentence. */
  public static String of(TimeWarning warning) {
    if (warning instanceof TimeWarning.FormerCoating former) {
      return "Former coating: "
          + former.film().label()
          + former
              .film()
              .succeededBy()
              .map(
                  code ->
                      " has been replaced by "
                          + code
                          + "; the film sold now may need another time.")
              .orElse(" is no longer made.");
    }
    if (warning instanceof TimeWarning.OtherCoatings other) {
      return "Taken as "
          + other.taken().label()
          + ", the newest coating with a time in this developer. Not used: "
          + String.join(", ", other.others().stream().map(film -> film.label()).toList())
          + ".";
    }
    if (warning instanceof TimeWarning.ShortInHandTank tooShort) {
      return clock(tooShort.time())
          + " is under "
          + clock(tooShort.limit())
          + ": in a tank turned by hand the film may come out uneven (common practice).";
    }
    if (warning instanceof TimeWarning.SourcesDisagree disagree) {
      return "Another source says "
          + clock(disagree.other().time())
          + " ("
          + disagree.other().entry().citation()
          + "); the two bands lie "
          + clock(disagree.apart())
          + " apart.";
    }
    if (warning instanceof TimeWarning.FormatMatters formats) {
      return "The time depends on the format: " + byFormat(formats.byFormat()) + ".";
    }
    if (warning instanceof TimeWarning.RestsOnGuess guess) {
      return "Rests on a guess: " + guess.step().description() + ".";
    }
    if (warning instanceof TimeWarning.LongerForContrast longer) {
      return "For raised contrast: " + clock(longer.time()) + ".";
    }
    if (warning instanceof TimeWarning.RotaryPracticeDiffers rotary) {
      return "Common practice for rotary and hand tanks differs: "
          + clock(rotary.low())
          + " to "
          + clock(rotary.high())
          + ".";
    }
    if (warning instanceof TimeWarning.CountsAsMakers own) {
      return "Your own index, in use: "
          + own.own()
          + " is developed like the "
          + own.makers()
          + " of the rolls it was learned from, as normal, not pushed or pulled.";
    }
    if (warning instanceof TimeWarning.OffOwnIndex off) {
      return "Your own index, in use, is "
          + String.format(Locale.ROOT, "%.0f", off.own().isoArithmetic())
          + ": exposed at "
          + String.format(Locale.ROOT, "%.0f", off.asked().isoArithmetic())
          + " its shadows get "
          + String.format(Locale.ROOT, "%.1f", off.off().abs().count())
          + (off.off().count() > 0 ? " stops less" : " stops more")
          + " light than you need. The time is not changed by it.";
    }
    if (warning instanceof TimeWarning.Note note) {
      return note.aboutAgitation()
          ? "Agitation in the source: " + note.text() + "."
          : "Beside the row: " + note.text() + ".";
    }
    throw new IllegalStateException("no words for " + warning);
  }

  private static String byFormat(List<Candidate> candidates) {
    return String.join(
        ", ",
        candidates.stream()
            .map(one -> one.entry().format().word() + " " + clock(one.time()))
            .toList());
  }

  /** Which of these are short for a tank turned by hand, as a sentence; empty when none is. */
  public static String shortInHandTank(List<TimeEntry> entries) {
    Duration limit = TimeShelf.shortestInHandTank();
    List<String> brief =
        entries.stream()
            .filter(entry -> entry.vessel() == Vessel.SMALL_TANK)
            .filter(entry -> entry.time().compareTo(limit) < 0)
            .map(entry -> clock(entry.time()))
            .distinct()
            .toList();
    return brief.isEmpty()
        ? ""
        : String.join(", ", brief)
            + " is under "
            + clock(limit)
            + ": in a tank turned by hand the film may come out uneven. Kept"
            + " as printed.";
  }

  /** Why there is no honest time, as a sentence in those units. */
  public static String of(Refusal refusal, Units units) {
    if (refusal instanceof Refusal.NoEntries none) {
      return "No time for "
          + none.film().label()
          + " in "
          + none.developer().name()
          + " is on file.";
    }
    if (refusal instanceof Refusal.NoStep step) {
      return "No rule leads from "
          + step.gap().word()
          + " "
          + step.from()
          + " to "
          + step.to()
          + ".";
    }
    if (refusal instanceof Refusal.TooUncertain uncertain) {
      return String.format(
          Locale.ROOT,
          "The best way there is uncertain by ±%.0f %%; the limit is ±%.0f %%.",
          percent(uncertain.lnSd()),
          percent(uncertain.limit()));
    }
    if (refusal instanceof Refusal.TooFarToGuess far) {
      return String.format(
          Locale.ROOT,
          "%.1f stops would rest on a guess; the limit is %.0f stops.",
          far.guessed().count(),
          far.limit().count());
    }
    if (refusal instanceof Refusal.OtherAgitation other) {
      return "The times on file are for "
          + other.known().word()
          + " agitation; they say nothing about "
          + other.asked().word()
          + ".";
    }
    if (refusal instanceof Refusal.OutsideTemperatures outside) {
      return "At "
          + units.words(outside.asked())
          + " no step is honest; the limit is "
          + units.words(outside.allowed().low())
          + " to "
          + units.words(outside.allowed().high())
          + ".";
    }
    throw new IllegalStateException("no words for " + refusal);
  }

  /** Nine in ten, in percent, of a standard deviation in ln(time). */
  private static double percent(double lnSd) {
    return 100 * (Math.exp(1.645 * lnSd) - 1);
  }

  /** What would help, one sentence each, in those units. */
  public static List<String> help(TimeAnswer.NoHonestTime none, Units units) {
    java.util.ArrayList<String> help = new java.util.ArrayList<>();
    for (Refusal reason : none.reasons()) {
      if (reason instanceof Refusal.OutsideTemperatures outside) {
        help.add(
            "Bring the bath to between "
                + units.words(outside.allowed().low())
                + " and "
                + units.words(outside.allowed().high())
                + " (wetside temper).");
      }
    }
    if (!none.nearest().isEmpty()) {
      help.add(
          "Nearest on file: "
              + String.join("; ", none.nearest().stream().map(TimeWords::of).toList())
              + ".");
    }
    help.add(of(none.plan()));
    help.add("Or type one line from the leaflet (wetside times --add).");
    return help;
  }

  /** An entry in one line. */
  public static String of(TimeEntry entry) {
    return clock(entry.time())
        + entry.longest().map(longest -> "–" + clock(longest)).orElse("")
        + " in "
        + entry.developer()
        + " "
        + entry.dilution().label()
        + (entry.printedTemperature().isEmpty() ? "" : " at " + entry.printedTemperature())
        + entry.exposureIndex().map(index -> ", " + index).orElse("")
        + ", "
        + entry.vessel().label();
  }

  /** A clip test as an instruction. */
  public static String of(ClipTestPlan plan) {
    String cut =
        "Clip test: cut "
            + plan.clips()
            + " pieces of "
            + plan.framesPerClip()
            + " frames ("
            + plan.frames()
            + " frames) off a test roll; on each one frame as metered, one a stop under, one a stop"
            + " over";
    return plan.times().isEmpty()
        ? cut + "; " + plan.middle() + "."
        : cut
            + "; try "
            + String.join(", ", plan.times().stream().map(TimeWords::clock).toList())
            + " ("
            + plan.middle()
            + ").";
  }

  /** Reasons and help in one message, in metric units. */
  public static String message(TimeAnswer.NoHonestTime none) {
    return "No honest time. "
        + String.join(
            " ",
            none.reasons().stream()
                .map(reason -> of(reason, Units.METRIC))
                .distinct()
                .limit(3)
                .toList())
        + " What would help: "
        + String.join(" ", help(none, Units.METRIC));
  }
}
