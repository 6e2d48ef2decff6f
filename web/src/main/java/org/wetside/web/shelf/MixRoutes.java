package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.NoAnswerException;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.Mix;
import org.wetside.app.mixing.Temper;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.core.thermal.WaterAtHand;
import org.wetside.web.Routes;
import org.wetside.web.mixing.MixView;
import org.wetside.web.mixing.TemperView;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** Mixing and tempering on a page: {@code /shelf/mix} and {@code /shelf/temper}. */
public final class MixRoutes implements Routes {
  private static final String PAGE = "shelf/mix.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public MixRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get("/shelf/mix", this::mix);
    routes.get("/shelf/temper", this::temper);
    routes.post("/shelf/minimum", this::keepMinimum);
  }

  private void mix(Context ctx) {
    FilledForm form = asked(ctx);
    if (form.isBlank("dilution") && form.isBlank("total")) {
      show(ctx, form, FilledForm.empty(), Optional.empty(), Optional.empty(), Optional.empty());
      return;
    }
    FieldReader reader = new FieldReader(form, Pages.units(ctx));
    Optional<Dilution> dilution = reader.required("dilution", "dilution", Dilution::parse);
    Optional<Volume> total = reader.requiredVolume("total", "total to mix");
    Optional<UnitOfUse> film = reader.maybe("rolls", MixRoutes::rolls);
    Optional<Volume> makes = reader.maybeVolume("makes");
    Optional<Bottle> bottle = reader.maybe("bottle", text -> text).flatMap(this::bottle);
    Optional<MixView> answer = Optional.empty();
    if (reader.isGood() && dilution.isPresent() && total.isPresent()) {
      Optional<String> contents = bottle.map(found -> found.label().contents());
      try {
        answer =
            Optional.of(
                MixView.of(
                    new Mix()
                        .answer(
                            new Mix.Question(
                                dilution.get(),
                                total.get(),
                                contents,
                                film,
                                makes,
                                contents.flatMap(wetside.keepMinimum()::find))),
                    Pages.units(ctx)));
      } catch (BadValueException refused) {
        reader.refuse(fieldOf(refused), refused);
      }
    }
    show(ctx, reader.form(), FilledForm.empty(), answer, Optional.empty(), Optional.empty());
  }

  private static String fieldOf(BadValueException refused) {
    return switch (refused.thing()) {
      case "dilution" -> "dilution";
      case "volume that the package makes" -> "makes";
      default -> "total";
    };
  }

  private void temper(Context ctx) {
    FieldReader reader = new FieldReader(asked(ctx), Pages.units(ctx));
    Optional<Temperature> target = reader.requiredTemperature("to", "temperature wanted");
    Optional<Volume> total = reader.requiredVolume("volume", "volume wanted");
    List<WaterAtHand> waters = new ArrayList<>();
    for (String name : List.of("cold", "hot", "ice")) {
      reader
          .maybeTemperature(name)
          .ifPresent(degrees -> waters.add(new WaterAtHand(name, degrees)));
    }
    Optional<Volume> stock = reader.maybeVolume("stock");
    Optional<Temperature> stockAt =
        stock.isPresent()
            ? reader.requiredTemperature("stockAt", "temperature of the stock")
            : Optional.empty();
    Optional<TemperView> answer = Optional.empty();
    Optional<String> none = Optional.empty();
    if (reader.isGood() && target.isPresent() && total.isPresent()) {
      try {
        List<Liquid> counted =
            stock.isPresent() && stockAt.isPresent()
                ? List.of(new Liquid("stock", stock.get(), stockAt.get()))
                : List.of();
        TemperingQuestion question =
            new TemperingQuestion(target.get(), total.get(), counted, waters, Optional.empty());
        answer =
            Optional.of(TemperView.of(question, new Temper().answer(question), Pages.units(ctx)));
      } catch (BadValueException refused) {
        reader.refuse(FilledForm.WHOLE, refused);
      } catch (NoAnswerException limit) {
        none = Optional.of(String.valueOf(limit.getMessage()));
      }
    }
    show(ctx, FilledForm.empty(), reader.form(), Optional.empty(), answer, none);
  }

  private void keepMinimum(Context ctx) {
    FilledForm form = FilledForm.of(ctx);
    FieldReader reader = new FieldReader(form, Pages.units(ctx));
    Optional<Volume> perRoll = reader.requiredVolume("perRoll", "stock for one roll");
    reader.required("source", "leaflet", text -> text);
    if (reader.isGood() && perRoll.isPresent()) {
      try {
        wetside.keepMinimum().put(form.value("developer"), perRoll.get(), form.value("source"));
        pages.goSaying(
            ctx,
            "/shelf/mix",
            form.value("developer")
                + " needs "
                + Pages.units(ctx).words(perRoll.get())
                + " for one roll, from the leaflet.");
        return;
      } catch (BadValueException refused) {
        reader.refuse("perRoll", refused);
      }
    }
    show(
        ctx,
        reader.form(),
        FilledForm.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Optional<Bottle> bottle(String letter) {
    return wetside.listBottles().find(letter);
  }

  private void show(
      Context ctx,
      FilledForm mix,
      FilledForm temper,
      Optional<MixView> mixed,
      Optional<TemperView> tempered,
      Optional<String> none) {
    MixPage page =
        new MixPage(
            pages.sheet(ctx, Place.SHELF, "Mix and temper"),
            mix,
            temper,
            mixed,
            tempered,
            none,
            MixPage.choices(wetside.listBottles().all()));
    if (mix.isRefused() || temper.isRefused()) {
      pages.showRefused(ctx, PAGE, page);
    } else {
      pages.show(ctx, PAGE, page);
    }
  }

  private static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, all) -> values.put(name, all.isEmpty() ? "" : all.get(0)));
    return FilledForm.of(values);
  }

  private static UnitOfUse rolls(String text) {
    try {
      return UnitOfUse.ofRolls(Double.parseDouble(text));
    } catch (NumberFormatException notOne) {
      throw new BadValueException("rolls", text, "write a number, for example 2 or 0.75");
    }
  }
}
