package org.wetside.web.testroll;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wetside.app.shelf.Today;
import org.wetside.app.times.TimeWords;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.StepDone;
import org.wetside.core.testroll.TestStep;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** Draws the page of one test roll: what is next, and all that was done. */
final class TestRollDesk {
  static final String TEMPLATE = "testroll/one.jte";
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

  private final Pages pages;

  TestRollDesk(Pages pages) {
    this.pages = pages;
  }

  /** The page with its form as nobody has touched it. */
  TestRollPage page(Context ctx, KeptTestRoll kept, LocalDate today) {
    return page(ctx, kept, FilledForm.of(Map.of("day", today.toString(), "time", planned(kept))));
  }

  /** The page with that form. */
  TestRollPage page(Context ctx, KeptTestRoll kept, FilledForm form) {
    Units units = Pages.units(ctx);
    TestRollView view = TestRollView.of(kept.roll());
    TestRollHead head = TestRollHead.of(view, units);
    return new TestRollPage(
        pages.sheet(ctx, Place.CURVES, "Test roll, " + head.title()),
        kept,
        view,
        head,
        SeriesRow.of(view),
        steps(kept, view, units),
        form,
        cautions(kept),
        RollDrawing.of(kept, view.pieces(), RollDrawing.WIDE),
        RollDrawing.of(kept, view.pieces(), RollDrawing.NARROW));
  }

  /** A day as it is said. */
  static String day(Instant at) {
    return DAY.format(Today.at(at).today());
  }

  private static String planned(KeptTestRoll kept) {
    return kept.next()
        .filter(step -> step.part() == TestStep.Part.DEVELOP)
        .map(step -> TimeWords.clock(kept.roll().plan().times().of(step.piece())))
        .orElse("");
  }

  private static List<StepLine> steps(KeptTestRoll kept, TestRollView view, Units units) {
    List<StepLine> lines = new ArrayList<>();
    TestStep next = kept.next().orElse(null);
    for (TestStep step : TestStep.values()) {
      TestRollView.TestStepView words = view.words(step);
      StepDone done = kept.done().get(step);
      lines.add(
          new StepLine(
              words.step(),
              words.title(),
              words.text(),
              done == null ? "" : day(done.at()),
              done == null ? "" : done.note(),
              done == null ? "" : really(kept, step, units),
              step == next));
    }
    return lines;
  }

  private static String really(KeptTestRoll kept, TestStep step, Units units) {
    PieceDeveloped developed = kept.developed().get(step.piece());
    if (step.part() != TestStep.Part.DEVELOP || developed == null) {
      return "";
    }
    return TimeWords.clock(developed.time())
        + developed.temperature().map(warm -> " at " + units.words(warm)).orElse("")
        + ", "
        + DAY.format(developed.day());
  }

  private static List<CautionView> cautions(KeptTestRoll kept) {
    boolean developing =
        kept.next().filter(step -> step.part() == TestStep.Part.DEVELOP).isPresent();
    return developing
        ? Cautions.open().whenHandling(kept.roll().developer(), BathKind.DEVELOPER).stream()
            .map(CautionView::of)
            .toList()
        : List.of();
  }
}
