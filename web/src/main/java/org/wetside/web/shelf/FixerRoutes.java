package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.FixerPair;
import org.wetside.core.shelf.Verdict;
import org.wetside.core.waste.FilledJug;
import org.wetside.reference.Cautions;
import org.wetside.web.Routes;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The page of two-bath fixing: make a pair, turn it by the test of its first bottle. */
public final class FixerRoutes implements Routes {
  private static final String HERE = "/shelf/fixers";
  private static final String TEMPLATE = "shelf/fixers.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public FixerRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, ctx -> show(ctx, FilledForm.empty()));
    routes.post(HERE, this::pair);
    routes.post(HERE + "/turn", this::turn);
  }

  private void pair(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    try {
      wetside.turnFixers().pair(form.value("first"), form.value("second"));
      pages.goSaying(
          ctx,
          HERE,
          "A pair: " + form.value("first") + " first, " + form.value("second") + " second.");
    } catch (BadValueException refused) {
      show(ctx, form.saying(refused.thing().startsWith("second") ? "second" : "first", refused));
    }
  }

  private void turn(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    String first = form.value("first");
    String field = "fresh-" + first;
    try {
      String fresh = form.isBlank(field) ? null : form.value(field);
      String jug = form.value("jug-" + first);
      FixerPair.Turn turn = new FixersBody(first, null, true, fresh, jug).turn(wetside);
      pages.goSaying(ctx, HERE, done(turn, fresh == null ? "" : fresh, jug));
    } catch (BadValueException refused) {
      boolean ofFresh = refused.thing().equals("fresh fixer") || refused.thing().equals("bottle");
      show(ctx, form.saying(ofFresh ? field : "jug-" + first, refused));
    }
  }

  private static String done(FixerPair.Turn turn, String fresh, String jug) {
    String where = jug.isBlank() ? "" : " into jug " + jug;
    if (turn instanceof FixerPair.MoveDown down) {
      return down.discard()
          + " is discarded"
          + where
          + "; "
          + down.movesDown()
          + " is first now, "
          + fresh
          + " second.";
    }
    FixerPair.DiscardBoth both = (FixerPair.DiscardBoth) turn;
    return both.first()
        + " and "
        + both.second()
        + " are discarded"
        + where
        + ": begin with two fresh ones.";
  }

  private void show(Context ctx, FilledForm form) {
    List<FixerPair> pairs = wetside.turnFixers().all();
    Map<String, String> free = new LinkedHashMap<>();
    Map<String, String> fresh = new LinkedHashMap<>();
    for (JudgedBottle judged : wetside.judgeBottles().all()) {
      Bottle bottle = judged.bottle();
      String letter = bottle.label().letter();
      boolean fixer =
          FilmUse.fixes(bottle.label().bath()) && bottle.label().role() == BottleRole.WORKING;
      boolean taken =
          pairs.stream().anyMatch(one -> one.first().equals(letter) || one.second().equals(letter));
      if (fixer && !taken) {
        String words =
            letter + ", " + bottle.label().contents() + ": " + judged.verdict().kind().word();
        free.put(letter, words);
        if (bottle.film().rolls() == 0) {
          fresh.put(letter, words);
        }
      }
    }
    FixersPage page =
        new FixersPage(
            pages.sheet(ctx, Place.SHELF, "Two fixers"),
            pairs.stream().map(this::line).toList(),
            free,
            fresh,
            jugs(),
            form);
    if (form.isRefused()) {
      pages.showRefused(ctx, TEMPLATE, page);
    } else {
      pages.show(ctx, TEMPLATE, page);
    }
  }

  private Map<String, String> jugs() {
    Map<String, String> jugs = new LinkedHashMap<>();
    jugs.put("", "nobody says where");
    wetside.wasteBook().keepJugs().all().stream()
        .map(FilledJug::jug)
        .filter(jug -> jug.kind().takes(Optional.of(BathKind.FIXER)))
        .forEach(jug -> jugs.put(jug.name(), jug.name() + ", " + jug.kind().word()));
    return jugs;
  }

  private FixersPage.Pair line(FixerPair pair) {
    Bottle first = wetside.judgeBottles().find(pair.first()).orElseThrow().bottle();
    Verdict verdict = wetside.judgeBottles().find(pair.first()).orElseThrow().verdict();
    return new FixersPage.Pair(
        pair.first(),
        pair.second(),
        VerdictView.of(verdict),
        verdict.kind() == Verdict.Kind.DISCARD,
        pair.next() instanceof FixerPair.MoveDown,
        FixersView.words(pair.next()),
        Cautions.open().whenHandling(first.label().contents(), first.label().bath()).stream()
            .map(CautionView::of)
            .toList());
  }
}
