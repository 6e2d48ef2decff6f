package org.wetside.web.times;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.KeepOutcome;
import org.wetside.app.times.OwnLine;
import org.wetside.app.times.RowProblem;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The Times page and its forms. */
public final class TimesPageRoutes implements Routes {
  private static final String TEMPLATE = "times.jte";
  private static final String HERE = "/times";
  private static final Map<String, String> FIELD_OF =
      Map.of(
          "exposure index", "ei", "temperature", "temp", "contrast aim", "film", "entry", "film");

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public TimesPageRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, this::ask);
    routes.post("/times/line", this::keepLine);
    routes.post("/times/leaflet", this::keepLeaflet);
    routes.post("/times/import", this::takeIn);
    routes.post("/times/withdraw", this::withdraw);
  }

  private void ask(Context ctx) {
    FilledForm ask = asked(ctx);
    if (ask.isBlank("film") && ask.isBlank("developer")) {
      pages.show(ctx, TEMPLATE, page(ctx, "Ask for a time", ask, null, null));
      return;
    }
    try {
      TimeAnswer answer = wetside.askTime().answer(TimesRoutes.request(ctx));
      if (answer instanceof TimeAnswer.Estimate estimate) {
        AnswerPart part = AnswerPart.of(estimate, wetside.learning().seeLearned().now());
        pages.show(ctx, TEMPLATE, page(ctx, "Develop " + part.time(), ask, part, null));
      } else {
        NoTimePart none = NoTimePart.of((TimeAnswer.NoHonestTime) answer, Pages.units(ctx));
        pages.show(ctx, TEMPLATE, page(ctx, "No honest time", ask, null, none));
      }
    } catch (BadValueException refusal) {
      String field = FIELD_OF.getOrDefault(refusal.thing(), refusal.thing());
      FilledForm refused = ask.saying(field, refusal);
      pages.showRefused(ctx, TEMPLATE, page(ctx, "Not clear yet", refused, null, null));
    }
  }

  private static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    ctx.queryParamMap()
        .forEach((name, given) -> values.put(name, given.isEmpty() ? "" : given.get(0)));
    values.putIfAbsent("vessel", "small");
    return FilledForm.of(values);
  }

  private TimesPage page(
      Context ctx,
      String title,
      FilledForm ask,
      @Nullable AnswerPart answer,
      @Nullable NoTimePart none) {
    return new TimesPage(
        pages.sheet(ctx, Place.TIMES, title),
        ask,
        answer,
        none,
        line(ask),
        LeafletGrid.fresh(ask),
        List.of(),
        own());
  }

  /** The one-line form, opened with what was asked. */
  private static FilledForm line(FilledForm ask) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String name :
        List.of("film", "developer", "dilution", "ei", "temp", "vessel", "agitation")) {
      values.put("line-" + name, ask.value(name));
    }
    return FilledForm.of(values);
  }

  private List<OwnTimeView> own() {
    return wetside.listTimes().inUse().stream().map(OwnTimeView::of).toList();
  }

  private void keepLine(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    KeepOutcome outcome = wetside.addTime().add(ownLine(form));
    if (outcome instanceof KeepOutcome.Refused refused) {
      TimesPage page = page(ctx, "Not kept yet", FilledForm.empty(), null, null);
      pages.showRefused(
          ctx,
          TEMPLATE,
          new TimesPage(
              page.sheet(),
              page.ask(),
              null,
              null,
              saying(form, refused.problems(), "line-"),
              page.grid(),
              List.of(),
              page.own()));
    } else {
      pages.goSaying(ctx, HERE, saidKept((KeepOutcome.Kept) outcome));
    }
  }

  private static OwnLine ownLine(FilledForm form) {
    return new OwnLine(
        form.value("line-film"),
        form.value("line-developer"),
        form.value("line-dilution"),
        form.value("line-ei"),
        form.value("line-temp"),
        form.value("line-minutes"),
        form.value("line-vessel"),
        form.value("line-agitation"),
        "",
        form.value("line-source"));
  }

  private void keepLeaflet(Context ctx) {
    LeafletGrid grid = new LeafletGrid(FilledForm.of(ctx));
    String more = grid.form().value("more");
    if (!more.isEmpty()) {
      pages.show(ctx, TEMPLATE, withGrid(ctx, "Type in the leaflet", grid.with(more)));
      return;
    }
    KeepOutcome outcome = wetside.typeLeaflet().keep(grid.leaflet());
    if (outcome instanceof KeepOutcome.Refused refused) {
      LeafletGrid said = new LeafletGrid(saying(grid.form(), refused.problems(), "grid-"));
      pages.showRefused(ctx, TEMPLATE, withGrid(ctx, "Not kept yet", said));
    } else {
      pages.goSaying(ctx, HERE, saidKept((KeepOutcome.Kept) outcome));
    }
  }

  private TimesPage withGrid(Context ctx, String title, LeafletGrid grid) {
    TimesPage page = page(ctx, title, FilledForm.empty(), null, null);
    return new TimesPage(
        page.sheet(), page.ask(), null, null, page.line(), grid, List.of(), page.own());
  }

  private static FilledForm saying(FilledForm form, List<RowProblem> problems, String prefix) {
    FilledForm said = form;
    for (RowProblem problem : problems) {
      String field = problem.column().isEmpty() ? FilledForm.WHOLE : prefix + problem.column();
      said = said.saying(field, problem.message());
    }
    return said;
  }

  private void takeIn(Context ctx) {
    List<String> wrong;
    UploadedFile file = ctx.uploadedFile("file");
    if (file == null || file.size() == 0) {
      wrong = List.of("No file was chosen.");
    } else {
      try {
        KeepOutcome outcome = wetside.importTimes().from(bytes(file));
        if (outcome instanceof KeepOutcome.Kept kept) {
          pages.goSaying(ctx, HERE, saidKept(kept));
          return;
        }
        wrong = ((KeepOutcome.Refused) outcome).problems().stream().map(RowProblem::text).toList();
      } catch (BadValueException refusal) {
        wrong = List.of(String.valueOf(refusal.getMessage()));
      }
    }
    TimesPage page = page(ctx, "Nothing taken in", FilledForm.empty(), null, null);
    pages.showRefused(
        ctx,
        TEMPLATE,
        new TimesPage(
            page.sheet(), page.ask(), null, null, page.line(), page.grid(), wrong, page.own()));
  }

  private static byte[] bytes(UploadedFile file) {
    try (InputStream content = file.content()) {
      return content.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the file sent", unreadable);
    }
  }

  private void withdraw(Context ctx) {
    String id = String.valueOf(ctx.formParam("id"));
    wetside.withdrawTime().withdraw(id);
    pages.goSaying(ctx, HERE, "Withdrawn: " + id + " is used no more.");
  }

  private static String saidKept(KeepOutcome.Kept kept) {
    int count = kept.entries().size();
    String said = "Kept " + count + (count == 1 ? " time." : " times.");
    return kept.alreadyThere() == 0 ? said : said + " " + kept.alreadyThere() + " on file already.";
  }
}
