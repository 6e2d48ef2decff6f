package org.wetside.web.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.Bottle;
import org.wetside.core.bath.BottleLabel;
import org.wetside.core.bath.Strength;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;
import org.wetside.web.page.FieldReader;

/** Bottles as JSON: {@code /api/bottles} and {@code /api/bottles/{letter}}. */
public final class BottleApi implements Routes {
  private final Wetside wetside;

  /** Over one open home. */
  public BottleApi(Wetside wetside) {
    this.wetside = wetside;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/api/bottles",
        ctx -> ctx.json(wetside.listBottles().all().stream().map(BottleView::of).toList()));
    routes.post("/api/bottles", this::add);
    routes.get("/api/bottles/{letter}", ctx -> ctx.json(view(ctx.pathParam("letter"))));
    routes.patch("/api/bottles/{letter}", this::change);
    routes.delete("/api/bottles/{letter}", this::discard);
  }

  /** A bottle to put on the shelf; {@code leftMl} left out means full. */
  record NewBottle(
      @Nullable String letter,
      @Nullable String contents,
      @Nullable String strength,
      @Nullable String bath,
      @Nullable Double fullMl,
      @Nullable Double leftMl,
      @Nullable Boolean oneShot,
      @Nullable String mixedOn,
      @Nullable String openedOn,
      @Nullable String note) {}

  /** What is done to a bottle: exactly one of the volumes or the day, and a note. */
  record Change(
      @Nullable Double takeMl,
      @Nullable Double topUpMl,
      @Nullable Double correctToMl,
      @Nullable String openedOn,
      @Nullable String note) {}

  private void add(Context ctx) {
    NewBottle body = Json.read(ctx, NewBottle.class);
    Volume full = Volume.ofMillilitres(required("fullMl", body.fullMl()));
    BottleLabel label =
        new BottleLabel(
            required("letter", body.letter()),
            required("contents", body.contents()),
            Strength.fromWord(required("strength", body.strength())),
            BathKind.fromWord(required("bath", body.bath())),
            full,
            Boolean.TRUE.equals(body.oneShot()),
            Optional.ofNullable(body.mixedOn()).map(FieldReader::day),
            Optional.ofNullable(body.openedOn()).map(FieldReader::day),
            orEmpty(body.note()));
    wetside
        .addBottle()
        .add(label, Optional.ofNullable(body.leftMl()).map(Volume::ofMillilitres).orElse(full));
    ctx.status(HttpStatus.CREATED);
    ctx.json(view(label.letter()));
  }

  private void change(Context ctx) {
    String letter = view(ctx.pathParam("letter")).letter();
    Change body = Json.read(ctx, Change.class);
    String note = orEmpty(body.note());
    if (body.takeMl() != null) {
      wetside.changeBottle().take(letter, Volume.ofMillilitres(body.takeMl()), note);
    } else if (body.topUpMl() != null) {
      wetside.changeBottle().topUp(letter, Volume.ofMillilitres(body.topUpMl()), note);
    } else if (body.correctToMl() != null) {
      wetside.changeBottle().correct(letter, Volume.ofMillilitres(body.correctToMl()), note);
    } else if (body.openedOn() != null) {
      wetside.changeBottle().open(letter, FieldReader.day(body.openedOn()));
    } else {
      throw new BadValueException(
          "change of a bottle", "nothing", "give takeMl, topUpMl, correctToMl or openedOn");
    }
    ctx.json(view(letter));
  }

  private void discard(Context ctx) {
    String letter = view(ctx.pathParam("letter")).letter();
    wetside.changeBottle().discard(letter, orEmpty(ctx.queryParam("note")));
    ctx.status(HttpStatus.NO_CONTENT);
  }

  private BottleView view(String letter) {
    Bottle bottle =
        wetside
            .listBottles()
            .find(letter)
            .orElseThrow(() -> new NotFoundResponse("no bottle " + letter + " on the shelf"));
    return BottleView.of(bottle);
  }

  private static <T> T required(String name, @Nullable T value) {
    if (value == null) {
      throw new BadValueException(name, "nothing", "it is needed");
    }
    return value;
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
