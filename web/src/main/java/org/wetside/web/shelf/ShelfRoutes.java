package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.CareForBath;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.app.shelf.LedgerPage;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.FixingTime;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.Disposal;
import org.wetside.web.Routes;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The pages of the Shelf: the board, one bottle with its acts, a new one. */
public final class ShelfRoutes implements Routes {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.ENGLISH);

  private final Wetside wetside;
  private final Pages pages;
  private final ZoneId zone = ZoneId.systemDefault();

  /** Over one open home. */
  public ShelfRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/shelf", this::board);
    routes.get("/shelf/new", ctx -> showNew(ctx, FilledForm.of(Map.of("use", "back"))));
    routes.post("/shelf/new", this::add);
    routes.get("/shelf/{letter}", this::bottle);
    routes.post("/shelf/{letter}/{act}", this::act);
  }

  private void board(Context ctx) {
    List<BottleLine> lines =
        wetside.judgeBottles().all().stream()
            .map(bottle -> BottleLine.of(bottle, today(), Pages.units(ctx)))
            .toList();
    pages.show(
        ctx,
        "shelf/shelf.jte",
        new ShelfPage(
            pages.sheet(ctx, Place.SHELF, ShelfPage.title(lines.size())),
            lines,
            wetside.readRecall().count()));
  }

  private void add(Context ctx) {
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<BottleForm.Described> described = BottleForm.read(reader);
    if (described.isPresent()) {
      try {
        wetside.addBottle().add(described.get().label(), described.get().filled());
        pages.goSaying(
            ctx, "/shelf", capital(described.get().label().spoken()) + ", stands on the shelf.");
        return;
      } catch (BadValueException refused) {
        reader.refuse(BottleForm.fieldOf(refused), refused);
      }
    }
    showNew(ctx, reader.form());
  }

  private void act(Context ctx) {
    JudgedBottle bottle = found(ctx);
    String letter = bottle.bottle().label().letter();
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    BottleAct act = BottleAct.of(ctx.pathParam("act")).orElseThrow(NotFoundResponse::new);
    String said = act.perform(wetside, letter, reader, today());
    if (!reader.isGood()) {
      showBottle(ctx, bottle, reader.form(), FilledForm.empty());
    } else {
      pages.goSaying(ctx, act == BottleAct.DISCARD ? "/shelf" : "/shelf/" + letter, said);
    }
  }

  private void bottle(Context ctx) {
    FilledForm typed =
        FilledForm.of(Map.of("at", Objects.requireNonNullElse(ctx.queryParam("at"), "")));
    FieldReader reader = new FieldReader(typed, Pages.units(ctx));
    Temperature at = reader.maybeTemperature("at").orElse(FixingTime.USUAL);
    JudgedBottle judged = found(ctx);
    try {
      judged = found(ctx, at);
    } catch (BadValueException refused) {
      reader.refuse("at", refused);
    }
    showBottle(ctx, judged, FilledForm.empty(), reader.form());
  }

  private void showNew(Context ctx, FilledForm form) {
    BottleForm page = new BottleForm(pages.sheet(ctx, Place.SHELF, "A new bottle"), form);
    if (form.isRefused()) {
      pages.showRefused(ctx, "shelf/new.jte", page);
    } else {
      pages.show(ctx, "shelf/new.jte", page);
    }
  }

  private void showBottle(Context ctx, JudgedBottle judged, FilledForm form, FilledForm at) {
    Bottle bottle = judged.bottle();
    String contents = bottle.label().contents();
    List<BottlePage.Line> book = new ArrayList<>();
    Optional<Long> before = before(ctx);
    LedgerPage part =
        wetside.listBottles().page(bottle.label().letter(), before, BottlesView.LINES);
    part.entries()
        .forEach(
            entry ->
                book.add(BottlePage.Line.of(entry, when(entry.line().at()), Pages.units(ctx))));
    BottlePage page =
        new BottlePage(
            pages.sheet(ctx, Place.SHELF, capital("bottle " + bottle.label().letter())),
            BottleLine.of(judged, today(), Pages.units(ctx)),
            bottle.label().openedOn().isPresent(),
            DecideView.of(bottle),
            views(Cautions.open().whenHandling(contents, bottle.label().bath())),
            views(Disposal.open().of(bottle.label().bath())),
            book,
            part.older().map(Object::toString).orElse(""),
            fixers(bottle.label().letter()),
            FixingView.of(judged, Pages.units(ctx)),
            at,
            CareForBath.concerns(bottle),
            form);
    if (form.isRefused() || at.isRefused()) {
      pages.showRefused(ctx, "shelf/bottle.jte", page);
    } else {
      pages.show(ctx, "shelf/bottle.jte", page);
    }
  }

  private static List<CautionView> views(List<Caution> cautions) {
    return cautions.stream().map(CautionView::of).toList();
  }

  private String fixers(String letter) {
    return wetside
        .turnFixers()
        .of(letter)
        .map(
            pair ->
                pair.first()
                    + " first, "
                    + pair.second()
                    + " second. "
                    + FixersView.words(pair.next()))
        .orElse("");
  }

  private static Optional<Long> before(Context ctx) {
    try {
      return Optional.ofNullable(ctx.queryParam("before")).map(Long::valueOf);
    } catch (NumberFormatException noNumber) {
      throw new NotFoundResponse("There is no such part of the book.");
    }
  }

  private JudgedBottle found(Context ctx) {
    return found(ctx, FixingTime.USUAL);
  }

  private JudgedBottle found(Context ctx, Temperature fixedAt) {
    String letter = ctx.pathParam("letter");
    return wetside
        .judgeBottles()
        .find(letter, fixedAt)
        .orElseThrow(() -> new NotFoundResponse("No bottle " + letter + " ever stood here."));
  }

  private LocalDate today() {
    return LocalDate.ofInstant(wetside.clock().instant(), zone);
  }

  private String when(Instant moment) {
    return WHEN.format(moment.atZone(zone));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ENGLISH) + words.substring(1);
  }
}
