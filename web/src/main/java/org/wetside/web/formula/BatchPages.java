package org.wetside.web.formula;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.bath.BathKind;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** Mixing as ticks: a batch begun, each step with what really went in, then the bottle. */
public final class BatchPages implements Routes {
  private static final String ONE = FormulaAddress.BATCHES + "/{batch}";
  private static final String STEP = ONE + "/steps/{step}";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public BatchPages(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(ONE, ctx -> show(ctx, BatchApi.known(ctx, wetside), FilledForm.empty()));
    routes.post(STEP + "/done", this::done);
    routes.post(STEP + "/undone", this::undone);
    routes.post(ONE + "/bottle", this::fill);
    routes.post(FormulaAddress.ALL + "/{formula}/batches", this::begin);
  }

  private void begin(Context ctx) {
    Formula formula = FormulaPages.known(ctx, wetside);
    FormulaWish wish = new FormulaWish(FilledForm.of(ctx), Pages.units(ctx));
    Optional<WeighOut.Question> question = wish.question(formula.code());
    if (question.isEmpty()) {
      new FormulaPages(wetside, pages).show(ctx, wish);
      return;
    }
    Batch batch = wetside.mixBatch().begin(question.get());
    pages.goSaying(ctx, address(batch), "Begun. It is kept step by step.");
  }

  private void done(Context ctx) {
    Batch batch = BatchApi.known(ctx, wetside);
    int position = BatchApi.step(ctx);
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    boolean poured =
        batch.steps().stream()
            .anyMatch(step -> step.position() == position && step.volume().isPresent());
    Optional<String> amount = reader.required("amount", "amount", text -> text);
    if (poured) {
      amount = reader.maybeVolume("amount").map(Volume::toString);
    }
    if (amount.isPresent()) {
      try {
        Batch now = wetside.mixBatch().done(batch.id(), position, amount.get());
        ctx.redirect(address(now), HttpStatus.SEE_OTHER);
        return;
      } catch (BadValueException refused) {
        reader.refuse("amount", refused);
      }
    }
    show(ctx, batch, reader.form());
  }

  private void undone(Context ctx) {
    Batch batch = wetside.mixBatch().undone(BatchApi.known(ctx, wetside).id(), BatchApi.step(ctx));
    pages.goSaying(ctx, address(batch), "Not done after all.");
  }

  private void fill(Context ctx) {
    Batch batch = BatchApi.known(ctx, wetside);
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    FilledForm form = reader.form();
    Optional<Volume> holds = reader.requiredVolume("holds", "volume when full");
    Optional<BathKind> bath = reader.required("bath", "kind of bath", BathKind::fromWord);
    Optional<BottleRole> role = reader.required("role", "strength", BottleRole::fromWord);
    if (holds.isPresent() && bath.isPresent() && role.isPresent()) {
      try {
        BottleLabel label =
            BottleLabel.of(
                form.value("letter"), batch.formula(), role.get(), bath.get(), holds.get());
        wetside.mixBatch().bottle(batch.id(), label);
        pages.goSaying(
            ctx,
            "/shelf",
            "Batch "
                + batch.id()
                + " stands on the shelf, bottle "
                + label.letter()
                + leftOver(batch.total(), label.full(), reader.units())
                + ".");
        return;
      } catch (BadValueException refused) {
        reader.refuse(fieldOf(refused), refused);
      }
    }
    show(ctx, batch, reader.form());
  }

  private static String leftOver(Volume made, Volume holds, Units units) {
    return made.compareTo(holds) > 0
        ? "; " + units.words(made.minus(holds)) + " did not fit into it"
        : "";
  }

  private static String fieldOf(BadValueException refused) {
    return switch (refused.thing()) {
      case "letter of the bottle" -> "letter";
      case "volume of the bottle" -> "holds";
      default -> FilledForm.WHOLE;
    };
  }

  private void show(Context ctx, Batch batch, FilledForm form) {
    BatchPage page =
        new BatchPage(
            pages.sheet(ctx, Place.SHELF, "Mixing " + batch.formula()),
            BatchView.of(batch),
            form.values().isEmpty() ? guess(batch, Pages.units(ctx)) : form,
            baths(),
            roles());
    if (form.isRefused()) {
      pages.showRefused(ctx, "formula/batch.jte", page);
    } else {
      pages.show(ctx, "formula/batch.jte", page);
    }
  }

  /** What the kind of the formula says about the bottle. */
  private static FilledForm guess(Batch batch, Units units) {
    String bath = "developer";
    for (BathKind kind : BathKind.values()) {
      bath = batch.kind().contains(kind.word()) ? kind.word() : bath;
    }
    return FilledForm.of(
        Map.of("bath", bath, "role", "stock", "holds", units.number(batch.total())));
  }

  private static Map<String, String> baths() {
    Map<String, String> words = new LinkedHashMap<>();
    for (BathKind bath : BathKind.values()) {
      words.put(bath.word(), bath.word());
    }
    return words;
  }

  private static Map<String, String> roles() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("stock", "stock, made up once");
    words.put("working", "working strength, ready to pour");
    words.put("replenisher", "replenisher");
    return words;
  }

  private static String address(Batch batch) {
    return FormulaAddress.BATCHES + "/" + batch.id();
  }
}
