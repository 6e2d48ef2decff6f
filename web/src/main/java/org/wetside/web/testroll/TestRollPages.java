package org.wetside.web.testroll;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Objects;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.Today;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/**
 * Test rolls on pages: {@code /curves/testrolls}. Planned, printed, and followed step by step, for
 * weeks if need be.
 */
public final class TestRollPages implements Routes {
  private static final String NEW = TestRollAddress.ALL + "/new";
  private static final String FORM = "testroll/form.jte";

  private final Wetside wetside;
  private final Pages pages;
  private final TestRollDesk desk;

  /** Over one open home. */
  public TestRollPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
    desk = new TestRollDesk(pages);
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(TestRollAddress.ALL, this::all);
    routes.get(NEW, ctx -> pages.show(ctx, FORM, blank(ctx, TestRollForm.blank())));
    routes.post(NEW, this::begin);
    routes.get(TestRollAddress.ONE, this::one);
    routes.get(TestRollAddress.ONE + "/sheet.pdf", this::sheet);
    routes.get(TestRollAddress.ONE + "/change", this::planned);
    routes.post(TestRollAddress.ONE + "/change", this::replan);
    routes.post(TestRollAddress.ONE + "/done", this::tick);
    routes.post(TestRollAddress.ONE + "/undone", this::untick);
    routes.post(TestRollAddress.ONE + "/away", this::putAway);
  }

  private KeepTestRolls rolls() {
    return wetside.sensitometry().keepTestRolls();
  }

  private void all(Context ctx) {
    pages.show(
        ctx,
        "testroll/all.jte",
        new TestRollsPage(
            pages.sheet(ctx, Place.CURVES, "Test rolls"),
            rolls().all().stream().map(TestRollPages::line).toList()));
  }

  private static TestRollsPage.Line line(KeptTestRoll kept) {
    TestRollView view = TestRollView.of(kept.roll());
    return new TestRollsPage.Line(
        TestRollAddress.of(kept),
        TestRollHead.of(view).title(),
        kept.next().map(step -> view.words(step).title()).orElse(""),
        kept.done().size(),
        TestStep.values().length,
        TestRollDesk.day(kept.keptAt()));
  }

  private void begin(Context ctx) {
    TestRollForm form = new TestRollForm(FilledForm.of(ctx), Pages.units(ctx));
    Optional<TestRoll> roll = form.roll();
    if (roll.isEmpty()) {
      pages.showRefused(ctx, FORM, blank(ctx, form.shown()));
      return;
    }
    KeptTestRoll kept = rolls().begin(roll.get());
    pages.goSaying(
        ctx, TestRollAddress.of(kept), "Kept. Print the sheet: it goes with you to the camera.");
  }

  private TestRollFormPage blank(Context ctx, FilledForm form) {
    return new TestRollFormPage(
        pages.sheet(ctx, Place.CURVES, "A new test roll"), form, NEW, TestRollAddress.ALL, true);
  }

  private void one(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    pages.show(ctx, TestRollDesk.TEMPLATE, desk.page(ctx, kept, Today.of(wetside.clock())));
  }

  private void sheet(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    ctx.contentType("application/pdf");
    ctx.header("Content-Disposition", "inline; filename=\"test-roll-" + kept.id() + ".pdf\"");
    ctx.header("Cache-Control", "no-store");
    ctx.result(
        TestRollSheet.pdf(TestRollView.of(kept.roll()), Pages.units(ctx), ctx.queryParam("paper")));
  }

  private void planned(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    pages.show(ctx, FORM, changing(ctx, kept, TestRollForm.filled(kept.roll(), Pages.units(ctx))));
  }

  private void replan(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    TestRollForm form = new TestRollForm(FilledForm.of(ctx), Pages.units(ctx));
    Optional<TestRoll> roll = form.roll();
    if (roll.isEmpty()) {
      pages.showRefused(ctx, FORM, changing(ctx, kept, form.shown()));
      return;
    }
    try {
      rolls().replan(kept.id(), roll.get());
    } catch (BadValueException refused) {
      pages.showRefused(
          ctx, FORM, changing(ctx, kept, form.shown().saying(FilledForm.WHOLE, refused)));
      return;
    }
    pages.goSaying(ctx, TestRollAddress.of(kept), "Planned anew. A sheet printed before is void.");
  }

  private TestRollFormPage changing(Context ctx, KeptTestRoll kept, FilledForm form) {
    String path = TestRollAddress.of(kept);
    return new TestRollFormPage(
        pages.sheet(ctx, Place.CURVES, "Plan it anew"), form, path + "/change", path, false);
  }

  private void tick(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      rolls().tick(kept.id(), TestStep.fromWord(form.value("step")), form.value("note"));
    } catch (BadValueException refused) {
      String field = refused.thing().equals("note") ? "note" : FilledForm.WHOLE;
      pages.showRefused(
          ctx, TestRollDesk.TEMPLATE, desk.page(ctx, kept, form.saying(field, refused)));
      return;
    }
    pages.goSaying(ctx, TestRollAddress.of(kept), "Ticked.");
  }

  private void untick(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    String step = Objects.requireNonNullElse(ctx.formParam("step"), "");
    rolls().untick(kept.id(), TestStep.fromWord(step));
    pages.goSaying(ctx, TestRollAddress.of(kept), "Open again; what was typed is still there.");
  }

  private void putAway(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    boolean there = rolls().putAway(kept.id());
    pages.goSaying(
        ctx,
        TestRollAddress.ALL,
        there ? "Put away. Its curves stay in use." : "It was put away already.");
  }
}
