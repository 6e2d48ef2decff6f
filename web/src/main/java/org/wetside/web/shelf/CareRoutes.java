package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.CareForBath;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.web.Routes;
import org.wetside.web.mixing.Typed;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The page of a developer that is used again: replenishing in parts, and times by roll number. */
public final class CareRoutes implements Routes {
  private static final String HERE = "/shelf/{letter}/care";
  private static final String TEMPLATE = "shelf/care.jte";
  private static final String PART = "part-";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public CareRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, this::ask);
    routes.post(HERE, this::replenished);
  }

  private void ask(Context ctx) {
    Map<String, String> typed = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, said) -> typed.put(name, said.isEmpty() ? "" : said.get(0)));
    show(ctx, bottle(ctx), new FieldReader(FilledForm.of(typed), Pages.units(ctx)));
  }

  private void replenished(Context ctx) {
    Bottle bottle = bottle(ctx);
    String letter = bottle.label().letter();
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Wish wish = Wish.read(reader, wetside, letter);
    Set<Integer> done = ticked(reader.form());
    if (reader.isGood()) {
      try {
        int count =
            wetside
                .careForBath()
                .replenished(letter, wish.film(), wish.perRoll(), done, wetside.clock());
        int all = Integer.parseInt(reader.form().value("parts"));
        pages.goSaying(
            ctx,
            count >= all ? "/shelf/" + letter : rest(letter, wish, reader.form(), all - count, all),
            count == 1 ? "One part is in its book." : count + " parts are in its book.");
        return;
      } catch (BadValueException refused) {
        reader.refuse(FilledForm.WHOLE, refused);
      } catch (NumberFormatException tampered) {
        throw new NotFoundResponse("There are no such parts.");
      }
    }
    show(ctx, bottle, reader);
  }

  /** What is still to be added, as so much film. */
  private static String rest(String letter, Wish wish, FilledForm form, int left, int all) {
    String rolls = String.format(Locale.ROOT, "%.4f", wish.film().rolls() * left / all);
    String perRoll = URLEncoder.encode(form.value("perRoll"), StandardCharsets.UTF_8);
    return "/shelf/"
        + URLEncoder.encode(letter, StandardCharsets.UTF_8)
        + "/care?rolls="
        + rolls
        + (perRoll.isEmpty() ? "" : "&perRoll=" + perRoll);
  }

  private static Set<Integer> ticked(FilledForm form) {
    Set<Integer> done = new TreeSet<>();
    form.values()
        .keySet()
        .forEach(
            name -> {
              if (name.matches(PART + "\\d{1,3}")) {
                done.add(Integer.parseInt(name.substring(PART.length())));
              }
            });
    return done;
  }

  private void show(Context ctx, Bottle bottle, FieldReader reader) {
    Wish wish = Wish.read(reader, wetside, bottle.label().letter());
    CareForBath.Answer answer = answer(bottle, wish, reader);
    Map<String, String> values = new LinkedHashMap<>(reader.form().values());
    values.putIfAbsent("rolls", number(wish.film().rolls()));
    CarePage page =
        new CareWords(reader.units())
            .page(
                pages.sheet(ctx, Place.SHELF, "Care for " + bottle.label().letter()),
                bottle,
                wetside.careForBath().filmSince(bottle.label().letter()),
                answer,
                new FilledForm(values, reader.form().messages()));
    if (reader.isGood()) {
      pages.show(ctx, TEMPLATE, page);
    } else {
      pages.showRefused(ctx, TEMPLATE, page);
    }
  }

  private CareForBath.Answer answer(Bottle bottle, Wish wish, FieldReader reader) {
    String letter = bottle.label().letter();
    try {
      return wetside.careForBath().of(letter, wish.film(), wish.perRoll());
    } catch (BadValueException refused) {
      reader.refuse("rolls", refused);
      return wetside.careForBath().of(letter, UnitOfUse.ONE_ROLL, Optional.empty());
    }
  }

  private Bottle bottle(Context ctx) {
    String letter = ctx.pathParam("letter");
    return wetside
        .listBottles()
        .find(letter)
        .filter(CareForBath::concerns)
        .orElseThrow(
            () ->
                new NotFoundResponse("No developer that is used again stands in " + letter + "."));
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
  }

  /** How much film, and how much replenisher for a roll of it. */
  private record Wish(UnitOfUse film, Optional<Volume> perRoll) {
    private static final double MOST_ROLLS = 1000;

    static Wish read(FieldReader reader, Wetside wetside, String letter) {
      UnitOfUse film =
          reader
              .maybe("rolls", Wish::film)
              .orElseGet(() -> wetside.careForBath().usualFilm(letter));
      return new Wish(film, reader.maybeVolume("perRoll").filter(one -> one.millilitres() > 0));
    }

    private static UnitOfUse film(String text) {
      double rolls = Typed.number("rolls", text, "2 or 0.75");
      if (rolls <= 0 || rolls > MOST_ROLLS) {
        throw new BadValueException("rolls", text, "above 0 and at most 1000");
      }
      return UnitOfUse.ofRolls(rolls);
    }
  }
}
