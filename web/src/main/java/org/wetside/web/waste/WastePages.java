package org.wetside.web.waste;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.Today;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.waste.FilledJug;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** The book of waste on pages: every jug, one jug, and what is done to them. */
public final class WastePages implements Routes {
  private static final String ALL = "/shelf/waste";
  private static final String ONE = ALL + "/{jug}";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public WastePages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ALL, ctx -> showAll(ctx, asked(ctx)));
    routes.post(ALL + "/new", this::add);
    routes.post(ALL + "/pour", this::pour);
    routes.get(ONE, ctx -> showOne(ctx, known(ctx), FilledForm.empty()));
    routes.post(ONE + "/hand-in", this::handIn);
    routes.post(ONE + "/take-back", this::takeBack);
  }

  /** The address of a jug. */
  static String pathOf(String jug) {
    return ALL + "/" + URLEncoder.encode(jug, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private void add(Context ctx) {
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Volume> holds = reader.requiredVolume("holds", "volume of the jug");
    if (holds.isPresent()) {
      FilledForm form = reader.form();
      try {
        FilledJug jug =
            wetside
                .wasteBook()
                .keepJugs()
                .add(
                    new JugBody(form.value("name"), form.value("kind"), holds.get().millilitres())
                        .described());
        pages.goSaying(ctx, ALL, "Jug " + jug.jug().name() + " stands there, empty.");
        return;
      } catch (BadValueException refused) {
        reader.refuse(
            switch (refused.thing()) {
              case "kind of waste" -> "kind";
              case "volume of the jug" -> "holds";
              default -> "name";
            },
            refused);
      }
    }
    showAll(ctx, reader.form());
  }

  private void pour(Context ctx) {
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    FilledForm form = reader.form();
    Optional<Volume> volume = reader.maybeVolume("volume");
    if (reader.isGood()) {
      try {
        FilledJug jug =
            new PouringBody(
                    form.value("bottle"),
                    form.value("contents"),
                    form.value("bath"),
                    volume.map(Volume::millilitres).orElse(null),
                    form.value("note"))
                .to(wetside.wasteBook().pourWaste(), form.value("jug"));
        String now = Pages.units(ctx).words(jug.filled());
        pages.goSaying(ctx, pathOf(jug.jug().name()), "Poured in: " + now + " are in it now.");
        return;
      } catch (BadValueException refused) {
        reader.refuse(
            switch (refused.thing()) {
              case "volume poured in" -> "volume";
              case "bottle" -> "bottle";
              case "what is poured in" -> "contents";
              case "jug" -> "jug";
              default -> FilledForm.WHOLE;
            },
            refused);
      }
    }
    showAll(ctx, reader.form());
  }

  private void handIn(Context ctx) {
    FilledJug jug = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      new HandInBody(form.value("on"), form.value("to"), form.value("handInNote"))
          .to(wetside.wasteBook().handIn(), jug.jug().name());
      pages.goSaying(ctx, ALL, "Jug " + jug.jug().name() + " was handed in and is empty.");
    } catch (BadValueException refused) {
      String field = refused.thing().equals("handed in to") ? "to" : "on";
      showOne(ctx, jug, form.saying(field, refused));
    }
  }

  private void takeBack(Context ctx) {
    FilledJug jug = known(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      new TakeBackBody(line(form.value("line")), form.value("reason"))
          .to(wetside.wasteBook().pourWaste(), jug.jug().name());
      pages.goSaying(ctx, pathOf(jug.jug().name()), "Taken back; the line stays in the book.");
    } catch (BadValueException refused) {
      showOne(ctx, jug, form.saying("reason", refused));
    }
  }

  private static @Nullable Long line(String text) {
    return text.matches("\\d{1,15}") ? Long.valueOf(text) : null;
  }

  private void showAll(Context ctx, FilledForm form) {
    WastePage page =
        new WastePage(
            pages.sheet(ctx, Place.SHELF, "Waste"),
            WasteView.of(wetside.wasteBook().keepJugs()),
            form,
            WastePage.bottles(wetside.listBottles().all()));
    if (form.isRefused()) {
      pages.showRefused(ctx, "waste/waste.jte", page);
    } else {
      pages.show(ctx, "waste/waste.jte", page);
    }
  }

  private void showOne(Context ctx, FilledJug jug, FilledForm form) {
    boolean refused = form.isRefused();
    FilledForm shown = refused ? form : FilledForm.of(Map.of("on", today()));
    JugPage page =
        new JugPage(
            pages.sheet(ctx, Place.SHELF, "Jug " + jug.jug().name()),
            JugView.of(jug, wetside.wasteBook().keepJugs()),
            shown);
    if (refused) {
      pages.showRefused(ctx, "waste/jug.jte", page);
    } else {
      pages.show(ctx, "waste/jug.jte", page);
    }
  }

  private String today() {
    return Today.of(wetside.clock()).toString();
  }

  private static FilledForm asked(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    String bottle = ctx.queryParam("bottle");
    if (bottle != null) {
      values.put("bottle", bottle);
    }
    return FilledForm.of(values);
  }

  private FilledJug known(Context ctx) {
    String name = ctx.pathParam("jug");
    return wetside
        .wasteBook()
        .keepJugs()
        .find(name)
        .orElseThrow(() -> new NotFoundResponse("There is no jug " + name + "."));
  }
}
