package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.RecalledRoll;
import org.wetside.reference.Cautions;
import org.wetside.web.Routes;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The recall list as a page. */
public final class RecallRoutes implements Routes {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public RecallRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/shelf/recall", ctx -> show(ctx, FilledForm.empty()));
    routes.post("/shelf/recall", this::refixed);
    routes.post("/shelf/recall/owner", this::owner);
  }

  private void refixed(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    String roll = form.value("roll");
    Optional<String> in = form.isBlank("in") ? Optional.empty() : Optional.of(form.value("in"));
    try {
      wetside.readRecall().refixed(roll, in, form.value("note"));
      pages.goSaying(ctx, "/shelf/recall", roll + " is fixed again.");
    } catch (BadValueException refused) {
      show(ctx, form.saying(FilledForm.WHOLE, refused));
    }
  }

  private void owner(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      wetside.readRecall().setOwner(form.value("roll"), form.value("owner"));
      pages.goSaying(ctx, "/shelf/recall", "The name is kept.");
    } catch (BadValueException refused) {
      show(ctx, form.saying(FilledForm.WHOLE, refused));
    }
  }

  private void show(Context ctx, FilledForm form) {
    List<RecallPage.Line> lines = new ArrayList<>();
    List<RecalledRoll> recalled = wetside.readRecall().all();
    for (RecalledRoll roll : recalled) {
      lines.add(
          new RecallPage.Line(
              lines.size() + 1,
              roll.roll(),
              roll.film(),
              roll.sleeve(),
              roll.owner(),
              roll.bottle() + ", " + roll.contents(),
              WHEN.format(roll.fixedAt().atZone(ZoneId.systemDefault()))));
    }
    RecallPage page =
        new RecallPage(
            pages.sheet(ctx, Place.SHELF, "Recall list"), lines, form, cautions(recalled));
    if (form.isRefused()) {
      pages.showRefused(ctx, "shelf/recall.jte", page);
    } else {
      pages.show(ctx, "shelf/recall.jte", page);
    }
  }

  /** Each once, also where several bottles fixed with the same. */
  private static List<CautionView> cautions(List<RecalledRoll> recalled) {
    return recalled.stream()
        .map(RecalledRoll::contents)
        .distinct()
        .flatMap(contents -> Cautions.open().whenHandling(contents, BathKind.FIXER).stream())
        .distinct()
        .map(CautionView::of)
        .toList();
  }
}
