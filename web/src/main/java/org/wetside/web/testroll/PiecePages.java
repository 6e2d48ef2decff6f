package org.wetside.web.testroll;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.curves.PieceReader;
import org.wetside.app.shelf.Today;
import org.wetside.app.testroll.DevelopedDraft;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.times.TimeWords;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.TypedReading;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.strip.StripTools;

/** The pieces of a test roll on pages: developed, and read frame by frame. */
public final class PiecePages implements Routes {
  private static final String TEMPLATE = "testroll/read.jte";
  private static final String INSTRUMENT = "instrument";

  private final Wetside wetside;
  private final Pages pages;
  private final TestRollDesk desk;

  /** Over one open home. */
  public PiecePages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
    desk = new TestRollDesk(pages);
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.post(TestRollAddress.PIECE + "/developed", this::develop);
    routes.get(TestRollAddress.PIECE, this::toRead);
    routes.post(TestRollAddress.PIECE, this::read);
  }

  private KeepTestRolls rolls() {
    return wetside.sensitometry().keepTestRolls();
  }

  private void develop(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    int piece = TestRollAddress.piece(ctx);
    FilledForm form = FilledForm.of(ctx);
    Map<String, BadValueException> problems = new LinkedHashMap<>();
    Optional<PieceDeveloped> developed =
        new DevelopedDraft(form.value("time"), form.value("temp"), form.value("day"))
            .read(
                kept.roll().plan().times().of(piece),
                Today.of(wetside.clock()),
                Pages.units(ctx),
                problems);
    if (developed.isPresent()) {
      try {
        rolls().develop(kept.id(), piece, developed.get(), form.value("note"));
        pages.goSaying(
            ctx, TestRollAddress.of(kept), "Written down. The film dries before it is read.");
        return;
      } catch (BadValueException refused) {
        problems.put("note", refused);
      }
    }
    for (Map.Entry<String, BadValueException> problem : problems.entrySet()) {
      form = form.saying(problem.getKey(), problem.getValue());
    }
    pages.showRefused(ctx, TestRollDesk.TEMPLATE, desk.page(ctx, kept, form));
  }

  private void toRead(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    int piece = TestRollAddress.piece(ctx);
    Map<String, String> values = typed(kept, piece);
    values.put(
        INSTRUMENT, Objects.requireNonNullElseGet(ctx.queryParam(INSTRUMENT), () -> readBy(kept)));
    pages.show(ctx, TEMPLATE, page(ctx, kept, piece, FilledForm.of(values)));
  }

  private void read(Context ctx) {
    KeptTestRoll kept = TestRollAddress.known(wetside, ctx);
    int piece = TestRollAddress.piece(ctx);
    FilledForm form = FilledForm.of(ctx);
    try {
      // kept before it is understood: a night may lie between two frames
      kept = rolls().type(kept.id(), readings(kept, piece, form));
    } catch (BadValueException refused) {
      pages.showRefused(
          ctx, TEMPLATE, page(ctx, kept, piece, form.saying(FilledForm.WHOLE, refused)));
      return;
    }
    if (!form.value("do").equals("curve")) {
      pages.goSaying(
          ctx,
          TestRollAddress.of(kept, piece)
              + "?"
              + INSTRUMENT
              + "="
              + URLEncoder.encode(form.value(INSTRUMENT), StandardCharsets.UTF_8),
          "Kept as you typed it.");
      return;
    }
    PieceReader reader = new PieceReader(wetside.densitometry());
    Optional<FilmStrip> strip = reader.read(kept, piece, form.value(INSTRUMENT));
    if (strip.isEmpty()) {
      pages.showRefused(ctx, TEMPLATE, page(ctx, kept, piece, complaining(form, reader)));
      return;
    }
    KeptTestRoll read = rolls().keepCurve(kept.id(), piece, strip.get());
    pages.goSaying(
        ctx,
        TestRollAddress.of(read),
        "Piece " + piece + " is curve " + read.curves().get(piece) + ".");
  }

  /** What read the pieces before. */
  private String readBy(KeptTestRoll kept) {
    return kept.curveNumbers().stream()
        .flatMap(curve -> wetside.sensitometry().keepStrips().find(curve).stream())
        .map(curve -> curve.strip().with().instrument())
        .filter(name -> !name.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static FilledForm complaining(FilledForm form, PieceReader reader) {
    FilledForm said = form;
    for (Map.Entry<String, String> problem : reader.problems().entrySet()) {
      boolean whole = problem.getKey().equals(PieceReader.WHOLE);
      said =
          said.saying(
              whole
                  ? FilledForm.WHOLE
                  : ReadPiecePage.field(Integer.parseInt(problem.getKey()), false),
              problem.getValue());
    }
    return said;
  }

  private static List<TypedReading> readings(KeptTestRoll kept, int piece, FilledForm form) {
    return kept.framesToRead(piece).stream()
        .map(
            frame ->
                new TypedReading(
                    frame.frame(),
                    form.value(ReadPiecePage.field(frame.frame(), false)),
                    form.value(ReadPiecePage.field(frame.frame(), true))))
        .toList();
  }

  private static Map<String, String> typed(KeptTestRoll kept, int piece) {
    Map<String, String> values = new LinkedHashMap<>();
    kept.framesToRead(piece)
        .forEach(
            frame -> {
              TypedReading typed = kept.typedFor(frame.frame());
              values.put(ReadPiecePage.field(frame.frame(), false), typed.first());
              values.put(ReadPiecePage.field(frame.frame(), true), typed.second());
            });
    return values;
  }

  private ReadPiecePage page(Context ctx, KeptTestRoll kept, int piece, FilledForm form) {
    TestRollView view = TestRollView.of(kept.roll());
    PieceDeveloped developed = kept.developed().get(piece);
    return new ReadPiecePage(
        pages.sheet(ctx, Place.CURVES, "Read piece " + piece),
        kept,
        piece,
        developed == null ? "" : TimeWords.clock(developed.time()),
        view.frames().stream()
            .filter(frame -> frame.piece() == piece && !frame.kind().equals("cut"))
            .toList(),
        form,
        StripTools.of(wetside.densitometry(), form),
        TestRollHead.of(view).logHWord());
  }
}
