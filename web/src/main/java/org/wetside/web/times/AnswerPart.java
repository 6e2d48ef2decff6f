package org.wetside.web.times;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.learning.SeeLearned;
import org.wetside.app.times.SourceTitles;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.BasisStep;
import org.wetside.core.development.Candidate;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

/**
 * The part of the page that shows an answer.
 *
 * @param time minutes and seconds
 * @param standing standing of the weakest step
 * @param from how it is known, as it goes on in the opening sentence
 * @param rows how it came about
 * @param band nine in ten of what the source says
 * @param bench nine in ten at this bench
 * @param factor the product of all steps
 * @param adds total uncertainty
 * @param warnings what one must know
 * @param others other ways to it
 * @param disagreements those whose bands do not touch
 * @param apart how far the first of them lies off; null when none
 * @param wide the drawing for a wide sheet
 * @param narrow the drawing for a phone
 * @param yours what the user's own rolls say beside it; null when nothing was learned
 * @param yourIndex the same of the index at which shadows come out; null likewise
 * @param learned whether the user's own factor is in the time
 */
public record AnswerPart(
    String time,
    Standing standing,
    String from,
    List<StepRow> rows,
    String band,
    String bench,
    String factor,
    String adds,
    List<String> warnings,
    List<OtherRow> others,
    List<OtherRow> disagreements,
    @Nullable String apart,
    BandsDrawing wide,
    BandsDrawing narrow,
    @Nullable String yours,
    @Nullable String yourIndex,
    boolean learned) {
  private static final int SHOWN_OTHERS = 3;
  private static final int WIDE = 840;
  private static final int NARROW = 358;

  /** One line of the table of steps. */
  public record StepRow(
      String step,
      String text,
      String source,
      Standing standing,
      String factor,
      String time,
      String adds) {}

  /** Another way to the time. */
  public record OtherRow(String time, String text, String source, Standing standing, String band) {}

  static AnswerPart of(TimeAnswer.Estimate estimate, SeeLearned.Now learned) {
    Candidate headline = estimate.headline();
    List<StepRow> rows = new ArrayList<>();
    double factor = 1;
    double product = 1;
    for (BasisStep step : headline.steps()) {
      product *= step.factor();
    }
    double start = TimeSpan.toSeconds(headline.time()) / product;
    for (BasisStep step : headline.steps()) {
      factor *= step.factor();
      boolean entry = step.kind() == BasisStep.Kind.ENTRY;
      rows.add(
          new StepRow(
              entry ? "Start" : capital(step.kind().word()),
              step.description(),
              source(step),
              step.standing(),
              entry ? "" : threeDecimals(step.factor()),
              TimeWords.clock(TimeSpan.ofSeconds(start * factor)),
              percent(step.lnSd())));
    }
    return new AnswerPart(
        TimeWords.clock(estimate.time()),
        estimate.standing(),
        from(estimate),
        rows,
        span(estimate.band().low(), estimate.band().high()),
        span(estimate.benchBand().low(), estimate.benchBand().high()),
        threeDecimals(product),
        percent(headline.lnSd()),
        estimate.warnings().stream().map(TimeWords::of).toList(),
        estimate.others().stream().map(AnswerPart::other).toList(),
        estimate.disagreements().stream().map(AnswerPart::other).toList(),
        apart(estimate),
        BandsDrawing.of(shown(estimate), WIDE),
        BandsDrawing.of(shown(estimate), NARROW),
        learned.beside(estimate.question()).map(AnswerPart::capital).orElse(null),
        learned.indexBeside(estimate.question()).map(AnswerPart::capital).orElse(null),
        isLearned(headline));
  }

  private static boolean isLearned(Candidate headline) {
    return headline.steps().stream().anyMatch(step -> step.kind() == BasisStep.Kind.OWN_FACTOR);
  }

  private static String from(TimeAnswer.Estimate estimate) {
    TimeEntry start = estimate.headline().entry();
    if (start.isOwn() && estimate.basis().size() == 1) {
      String source = start.citation().sourceId();
      return source.isEmpty() ? "as you typed it, without a source" : "as typed from " + source;
    }
    if (isLearned(estimate.headline())) {
      return "by your own factor on what is printed";
    }
    String what =
        switch (estimate.standing()) {
          case MEASURED -> "as you measured it";
          case PUBLISHED ->
              estimate.basis().size() == 1
                  ? "as it is printed for exactly this"
                  : "published, step by step";
          case COMPUTED -> "computed from one printed time";
          case COMMON_PRACTICE -> "partly by common practice";
          case FROM_MEMORY -> "from a time without a source";
        };
    return estimate.question().film().isFormerCoating() ? what + ", of a former coating" : what;
  }

  private static @Nullable String apart(TimeAnswer.Estimate estimate) {
    return estimate.warnings().stream()
        .filter(TimeWarning.SourcesDisagree.class::isInstance)
        .map(TimeWarning.SourcesDisagree.class::cast)
        .map(disagree -> TimeWords.clock(disagree.apart()))
        .findFirst()
        .orElse(null);
  }

  private static OtherRow other(Candidate candidate) {
    return new OtherRow(
        TimeWords.clock(candidate.time()),
        TimeWords.of(candidate.entry()),
        SourceTitles.of(candidate.entry().citation().sourceId()),
        candidate.standing(),
        span(candidate.band().low(), candidate.band().high()));
  }

  private static List<BandsDrawing.Shown> shown(TimeAnswer.Estimate estimate) {
    List<BandsDrawing.Shown> shown = new ArrayList<>();
    shown.add(shown("answer", "this answer", estimate.headline()));
    List<Candidate> neighbours = new ArrayList<>(estimate.disagreements());
    estimate.others().stream()
        .filter(other -> !neighbours.contains(other))
        .forEach(neighbours::add);
    for (Candidate other : neighbours.subList(0, Math.min(SHOWN_OTHERS, neighbours.size()))) {
      shown.add(shown("other", name(other.entry()), other));
    }
    double seconds = TimeSpan.toSeconds(estimate.time());
    shown.add(
        new BandsDrawing.Shown(
            "bench",
            "at your bench",
            seconds,
            TimeSpan.toSeconds(estimate.benchBand().low()),
            TimeSpan.toSeconds(estimate.benchBand().high())));
    return shown;
  }

  private static String name(TimeEntry entry) {
    return entry.isOwn() && !entry.citation().sourceId().isEmpty()
        ? entry.citation().sourceId()
        : "from "
            + entry.dilution().label()
            + " at "
            + entry.printedTemperature()
            + ", "
            + entry.vessel().label();
  }

  private static BandsDrawing.Shown shown(String kind, String name, Candidate candidate) {
    return new BandsDrawing.Shown(
        kind,
        name,
        TimeSpan.toSeconds(candidate.time()),
        TimeSpan.toSeconds(candidate.band().low()),
        TimeSpan.toSeconds(candidate.band().high()));
  }

  private static String source(BasisStep step) {
    String title = SourceTitles.of(step.citation().sourceId());
    return step.citation().locator().isEmpty() ? title : title + ", " + step.citation().locator();
  }

  private static String span(java.time.Duration low, java.time.Duration high) {
    return TimeWords.clock(low) + " and " + TimeWords.clock(high);
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String threeDecimals(double factor) {
    return factor == 1 ? "1" : String.format(Locale.ROOT, "%.3f", factor);
  }

  /** Nine in ten, in percent. */
  private static String percent(double lnSd) {
    return String.format(Locale.ROOT, "±%.0f %%", 100 * (Math.exp(1.645 * lnSd) - 1));
  }
}
