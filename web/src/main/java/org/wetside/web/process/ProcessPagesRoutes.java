package org.wetside.web.process;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.process.KeepProcess;
import org.wetside.app.process.ProcessDraft;
import org.wetside.app.process.ShowCues;
import org.wetside.app.process.StepDraft;
import org.wetside.app.times.TimeWords;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The pages of processes: all of them, one, its form. */
public final class ProcessPagesRoutes implements Routes {
  private static final String ALL = "/processes";
  private static final String FORM = "process/form.jte";

  /** The cues of a process whose time the load says are shown with this one. */
  private static final Duration SHOWN = Duration.ofMinutes(9);

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the pages
   */
  public ProcessPagesRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ALL, this::list);
    routes.get("/processes/new", ctx -> showForm(ctx, null, ProcessForm.of(blank())));
    routes.post("/processes/new", ctx -> keep(ctx, null));
    routes.get("/processes/{slug}", ctx -> show(ctx, FilledForm.empty()));
    routes.post("/processes/{slug}/copy", this::copy);
    routes.get("/processes/{slug}/change", this::changeForm);
    routes.post("/processes/{slug}/change", ctx -> keep(ctx, ctx.pathParam("slug")));
    routes.post("/processes/{slug}/remove", this::remove);
  }

  private void list(Context ctx) {
    List<FilmProcess> all = wetside.findProcess().all();
    pages.show(
        ctx,
        "process/list.jte",
        ProcessListPage.of(pages.sheet(ctx, Place.EQUIPMENT, "Processes"), all));
  }

  private void show(Context ctx, FilledForm copy) {
    FilmProcess process = found(ctx);
    Units units = Pages.units(ctx);
    boolean open = process.steps().stream().anyMatch(step -> step.duration().isEmpty());
    ShowCues.Cues cues =
        wetside.showCues().of(process.slug(), open ? Optional.of(SHOWN) : Optional.empty());
    ProcessPage page =
        new ProcessPage(
            pages.sheet(ctx, Place.EQUIPMENT, process.name()),
            process,
            process.steps().stream().map(step -> ProcessStepLine.of(step, units)).toList(),
            open ? "" : TimeWords.clock(cues.steps().get(cues.steps().size() - 1).end()),
            open ? TimeWords.clock(SHOWN) : "",
            cues.cues().stream()
                .map(
                    cue ->
                        new ProcessPage.CueLine(
                            signed(cue.at()),
                            cues.steps().get(cue.step()).step().kind().word(),
                            cue.text()))
                .toList(),
            wetside.removeProcess().using(process.slug()),
            wetside.checkOrder().of(process).stream().map(OrderWarningView::of).toList(),
            copy);
    if (copy.isRefused()) {
      pages.showRefused(ctx, "process/process.jte", page);
    } else {
      pages.show(ctx, "process/process.jte", page);
    }
  }

  private void copy(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    KeepProcess.Outcome outcome =
        wetside.keepProcess().copy(found(ctx).slug(), form.value("slug"), form.value("name"));
    if (outcome instanceof KeepProcess.Outcome.Kept kept) {
      FilmProcess process = kept.process();
      pages.goSaying(
          ctx,
          ALL + "/" + process.slug() + "/change",
          process.name() + " is yours. Change what you like.");
    } else {
      show(ctx, new ProcessForm(form).saying(((KeepProcess.Outcome.Unclear) outcome).faults()));
    }
  }

  private void changeForm(Context ctx) {
    FilmProcess process = own(ctx);
    showForm(ctx, process.slug(), ProcessForm.of(process, Pages.units(ctx)));
  }

  /** The key decides: keep it, or move its steps about. */
  private void keep(Context ctx, @Nullable String slug) {
    ProcessForm form = new ProcessForm(FilledForm.of(ctx));
    String wish = String.valueOf(ctx.formParam("do"));
    if (!wish.equals("keep")) {
      showForm(ctx, slug, form.after(wish));
      return;
    }
    try {
      ProcessDraft draft = form.draft(Pages.units(ctx));
      KeepProcess.Outcome outcome =
          slug == null
              ? wetside.keepProcess().add(draft)
              : wetside.keepProcess().change(slug, draft);
      if (outcome instanceof KeepProcess.Outcome.Kept kept) {
        FilmProcess process = kept.process();
        pages.goSaying(ctx, ALL + "/" + process.slug(), "Kept " + process.name() + ".");
        return;
      }
      form = new ProcessForm(form.saying(((KeepProcess.Outcome.Unclear) outcome).faults()));
    } catch (BadValueException gone) {
      form = new ProcessForm(form.form().saying(FilledForm.WHOLE, gone));
    }
    showForm(ctx, slug, form);
  }

  private void remove(Context ctx) {
    String slug = ctx.pathParam("slug");
    try {
      FilmProcess removed = wetside.removeProcess().remove(slug);
      pages.goSaying(
          ctx, ALL, "Took " + removed.name() + " away; runs led by it keep their steps.");
    } catch (CannotDoException | BadValueException refused) {
      pages.goSaying(ctx, ALL + "/" + slug, "Not taken away: " + refused.getMessage() + ".");
    }
  }

  private void showForm(Context ctx, @Nullable String slug, ProcessForm form) {
    ProcessFormPage page =
        new ProcessFormPage(
            pages.sheet(ctx, Place.EQUIPMENT, slug == null ? "A new process" : "Change " + slug),
            slug,
            form.form(),
            form.steps());
    if (form.form().isRefused()) {
      pages.showRefused(ctx, FORM, page);
    } else {
      pages.show(ctx, FORM, page);
    }
  }

  /** A process nobody has written yet: one step to begin with. */
  private static ProcessDraft blank() {
    return new ProcessDraft("", "", "", List.of(new StepDraft(Map.of())));
  }

  private FilmProcess found(Context ctx) {
    String slug = ctx.pathParam("slug");
    return wetside
        .findProcess()
        .find(slug)
        .orElseThrow(() -> new NotFoundResponse("There is no process " + slug + "."));
  }

  /** Only one's own is changed. */
  private FilmProcess own(Context ctx) {
    FilmProcess process = found(ctx);
    if (process.builtIn()) {
      throw new NotFoundResponse(
          process.name() + " is built in and stays as it is; make a copy of your own.");
    }
    return process;
  }

  /** From the beginning of the first pour; what is to be had ready comes before it. */
  private static String signed(Duration at) {
    double seconds = TimeSpan.toSeconds(at);
    return (seconds < 0 ? "−" : "")
        + String.format(
            Locale.ROOT, "%d:%02d", (long) Math.abs(seconds) / 60, (long) Math.abs(seconds) % 60);
  }
}
