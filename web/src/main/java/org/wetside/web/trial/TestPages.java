package org.wetside.web.trial;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.trial.FindTests;
import org.wetside.app.trial.UsualClip;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.ClearingComparison;
import org.wetside.core.trial.ClearingRule;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.StepMoment;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;
import org.wetside.reference.TestGuides;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.page.Sheet;
import org.wetside.web.shelf.Hatches;

/** Draws the page of a test. */
final class TestPages {
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Pages pages;
  private final ZoneId zone;

  TestPages(Wetside wetside, Pages pages) {
    this.pages = pages;
    zone = wetside.clock().getZone();
  }

  /** A test to be made, or what came of one. */
  void ready(
      Context ctx,
      FindTests.Found found,
      Optional<TrialKind> kind,
      Optional<Trial> ended,
      FilledForm form) {
    TestsView tests = TestsView.of(found, Pages.units(ctx));
    TestPage page =
        new TestPage(
            sheet(ctx, ended.isPresent() ? "The outcome" : "A test"),
            title(found),
            hatch(found),
            tests,
            kind.flatMap(
                shown ->
                    tests.guides().stream()
                        .filter(guide -> guide.kind().equals(shown.word()))
                        .findFirst()),
            ended.map(trial -> TestView.of(trial, Pages.units(ctx))),
            form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "bench/test.jte", page);
    } else {
      pages.show(ctx, "bench/test.jte", page);
    }
  }

  /** The sheet of the test that runs; the outcome of the last one when none does. */
  void running(Context ctx, FindTests.Found found, FilledForm form) {
    Optional<Trial> open = found.open();
    if (open.isEmpty()) {
      ready(ctx, found, Optional.empty(), found.over().stream().findFirst(), form);
      return;
    }
    Trial trial = open.get();
    Optional<Duration> mark = mark(trial, found);
    RunningPage page =
        new RunningPage(
            sheet(ctx, trial.kind().title()),
            title(found),
            hatch(found),
            TestView.of(trial, Pages.units(ctx)),
            SECOND.format(trial.startedAt().atZone(zone)),
            mark.map(TimeSpan::toSeconds).orElse(null),
            mark.map(at -> markWords(trial, at)).orElse(""),
            GuideView.of(trial.kind(), found.bottle()).at(StepMoment.JUDGE.word()),
            form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "bench/test-running.jte", page);
    } else {
      pages.show(ctx, "bench/test-running.jte", page);
    }
  }

  private static Optional<Duration> mark(Trial trial, FindTests.Found found) {
    Optional<Duration> left = TestGuides.open().of(trial.kind()).leftFor();
    Optional<ClipWish> clip = trial.clip();
    if (clip.isEmpty() || clip.get().fresh()) {
      return left;
    }
    return found
        .bottle()
        .flatMap(UsualClip::baseline)
        .filter(
            first ->
                ClearingComparison.of(Optional.of(first), asIf(clip.get()))
                    instanceof ClearingComparison.Compared)
        .map(ClearingRule::spentAt);
  }

  private static Clearing asIf(ClipWish clip) {
    return new Clearing(
        Duration.ofSeconds(1), clip.film(), clip.dilution(), clip.temperature(), false);
  }

  private static String markWords(Trial trial, Duration at) {
    return trial.kind() == TrialKind.RESIDUE
        ? "leave the drop until " + TestWords.clock(at)
        : "spent from " + TestWords.clock(at);
  }

  private Sheet sheet(Context ctx, String title) {
    return pages.sheet(ctx, Place.BENCH, title);
  }

  private static String title(FindTests.Found found) {
    return found
        .bottle()
        .map(bottle -> "bottle " + bottle.label().letter() + ", " + bottle.label().contents())
        .orElse("washed film");
  }

  private static String hatch(FindTests.Found found) {
    return found.bottle().map(bottle -> Hatches.of(bottle.label().bath())).orElse("");
  }
}
