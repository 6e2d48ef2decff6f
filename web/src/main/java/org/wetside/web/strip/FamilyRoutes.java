package org.wetside.web.strip;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.app.NoAnswerException;
import org.wetside.app.Wetside;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.app.curves.KeepMeasuredTime;
import org.wetside.app.curves.ReadFamily;
import org.wetside.app.times.KeepOutcome;
import org.wetside.app.times.RowProblem;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;

/** Strips of several times read together: {@code /curves/family}, and from there into Times. */
public final class FamilyRoutes implements Routes {
  private static final String HERE = "/curves/family";
  private static final String TEMPLATE = "strip/family.jte";

  private final Wetside wetside;
  private final Pages pages;

  /** Over one open home. */
  public FamilyRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(HERE, ctx -> show(ctx, asked(ctx.queryParamMap())));
    routes.post(HERE + "/times", this::keep);
  }

  /** The fields of the aim; without a word the usual ones, which stand in the fields. */
  private static Asked asked(Map<String, List<String>> said) {
    Map<String, String> values = new LinkedHashMap<>();
    said.forEach((name, all) -> values.put(name, all.isEmpty() ? "" : all.get(0)));
    values.putIfAbsent("range", FamilyQuery.USUAL_RANGE);
    values.putIfAbsent("flare", FamilyQuery.USUAL_FLARE);
    values.putIfAbsent("measure", "contrast-index");
    values.remove("strip");
    FilledForm form = FilledForm.of(values);
    return new Asked(
        form,
        new FamilyQuery(
            String.join(",", said.getOrDefault("strip", List.of())),
            form.value("range"),
            form.value("flare"),
            form.value("measure")));
  }

  /** What is asked, as typed. */
  private record Asked(FilledForm form, FamilyQuery query) {
    Asked saying(String field, String message) {
      return new Asked(form.saying(field, message), query);
    }
  }

  private void show(Context ctx, Asked asked) {
    List<Long> strips = List.of();
    try {
      strips = asked.query().numbers();
      if (strips.isEmpty()) {
        pages.show(ctx, TEMPLATE, empty(ctx, asked.form(), strips));
        return;
      }
      FamilyAnswer answer =
          new ReadFamily()
              .answer(wetside.sensitometry().keepStrips().find(strips), asked.query().aim());
      FamilyPage page = page(ctx, asked.form(), strips, answer);
      if (asked.form().isRefused()) {
        pages.showRefused(ctx, TEMPLATE, page);
      } else {
        pages.show(ctx, TEMPLATE, page);
      }
    } catch (BadValueException refused) {
      FilledForm form = asked.form().saying(fieldOf(refused.thing()), refused);
      pages.showRefused(ctx, TEMPLATE, empty(ctx, form, strips));
    }
  }

  private static String fieldOf(String thing) {
    return switch (thing) {
      case "log exposure range" -> "range";
      case "flare" -> "flare";
      case "measure of the aim" -> "measure";
      default -> FilledForm.WHOLE;
    };
  }

  private FamilyPage empty(Context ctx, FilledForm form, List<Long> strips) {
    return new FamilyPage(
        pages.sheet(ctx, Place.CURVES, "A family of curves"),
        form,
        strips,
        null,
        null,
        List.of(),
        List.of());
  }

  private FamilyPage page(Context ctx, FilledForm form, List<Long> strips, FamilyAnswer answer) {
    return new FamilyPage(
        pages.sheet(
            ctx,
            Place.CURVES,
            StripText.name(answer.members().get(0).kept().strip()) + ", a family"),
        form,
        strips,
        answer,
        FamilyDrawings.of(answer),
        answer.members().stream()
            .map(member -> FamilyRow.of(member, answer.aim().measure()))
            .toList(),
        answer.times().stream().map(time -> TimeRow.of(time, answer, form)).toList());
  }

  private void keep(Context ctx) {
    Asked asked = asked(ctx.formParamMap());
    int n = n(asked.form().value("n"));
    String field = TimeRow.field(n);
    try {
      FamilyAnswer family =
          new ReadFamily()
              .answer(
                  wetside.sensitometry().keepStrips().find(asked.query().numbers()),
                  asked.query().aim());
      KeepOutcome outcome =
          wetside.sensitometry().keepMeasuredTime().keep(family, n, asked.form().value(field));
      if (outcome instanceof KeepOutcome.Refused refused) {
        String why =
            String.join("; ", refused.problems().stream().map(RowProblem::message).toList());
        show(ctx, asked.saying(field, why));
        return;
      }
      pages.goSaying(ctx, back(asked), said((KeepOutcome.Kept) outcome, n));
    } catch (BadValueException | NoAnswerException refused) {
      show(ctx, asked.saying(field, String.valueOf(refused.getMessage())));
    }
  }

  private static String said(KeepOutcome.Kept kept, int n) {
    if (kept.entries().isEmpty()) {
      return "The time for " + KeepMeasuredTime.words(n) + " is among your times already.";
    }
    return Digits.clock(kept.entries().get(0).time().toSeconds())
        + " for "
        + KeepMeasuredTime.words(n)
        + " is among your times, as measured.";
  }

  private static int n(String typed) {
    if (!typed.matches("-?[0-2]")) {
      throw new BadValueException("N", typed, "from -2 to +2, whole steps");
    }
    return Integer.parseInt(typed);
  }

  private static String back(Asked asked) {
    StringBuilder path = new StringBuilder(HERE + "?");
    asked.query().numbers().forEach(id -> path.append("strip=").append(id).append('&'));
    return path.append("range=")
        .append(asked.form().value("range"))
        .append("&flare=")
        .append(asked.form().value("flare"))
        .append("&measure=")
        .append(asked.form().value("measure"))
        .toString();
  }
}
