package org.wetside.web.trial;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.trial.FindTests;
import org.wetside.app.trial.UsualClip;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;

/**
 * The page of a test: its guide and the key that starts it, then the key that stops it, then what
 * came of it. Plain forms do; the script only shows the seconds.
 */
public final class TestRoutes implements Routes {
  private static final String PATH = "/bench/test/{subject}";

  private final Wetside wetside;
  private final TestPages drawn;

  /** Over one open home. */
  public TestRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    drawn = new TestPages(wetside, pages);
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH, this::start);
    routes.post(PATH + "/seen", this::judge);
  }

  private void show(Context ctx) {
    FindTests.Found found = TestApi.found(wetside, ctx);
    Optional<Trial> ended = asked(ctx, found);
    if (ended.isEmpty() && found.open().isPresent()) {
      drawn.running(ctx, found, FilledForm.empty());
    } else {
      drawn.ready(ctx, found, kind(ctx.queryParam("kind"), found), ended, opened(ctx, found));
    }
  }

  private void start(Context ctx) {
    FindTests.Found found = TestApi.found(wetside, ctx);
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<TrialKind> kind = kind(reader.form().value("kind"), found);
    if (kind.isEmpty()) {
      throw new NotFoundResponse("There is no test of this bath.");
    }
    try {
      begin(TestApi.subject(ctx), kind.get(), reader);
    } catch (BadValueException refused) {
      reader.refuse(TestForm.fieldOf(refused), refused);
    }
    if (reader.isGood()) {
      ctx.redirect(path(ctx), HttpStatus.SEE_OTHER);
    } else {
      drawn.ready(ctx, found, kind, Optional.empty(), reader.form());
    }
  }

  private void begin(String subject, TrialKind kind, FieldReader reader) {
    if (kind.ofFilm()) {
      wetside.bathTests().startTest().ofFilm(TestForm.rolls(reader));
      return;
    }
    Optional<ClipWish> clip = kind == TrialKind.CLEARING ? TestForm.clip(reader) : Optional.empty();
    if (reader.isGood()) {
      wetside.bathTests().startTest().of(subject, kind, clip);
    }
  }

  private void judge(Context ctx) {
    FieldReader reader = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    try {
      Trial ended =
          wetside
              .bathTests()
              .judgeTest()
              .judge(
                  number(reader.form().value("test")),
                  Sighting.parse(reader.form().value("seen")),
                  reader.form().value("note"));
      ctx.redirect(path(ctx) + "?test=" + ended.id(), HttpStatus.SEE_OTHER);
    } catch (BadValueException refused) {
      reader.refuse(FilledForm.WHOLE, refused);
      drawn.running(ctx, TestApi.found(wetside, ctx), reader.form());
    }
  }

  /** The test that is over and whose outcome is asked for. */
  private Optional<Trial> asked(Context ctx, FindTests.Found found) {
    String number = ctx.queryParam("test");
    if (number == null) {
      return Optional.empty();
    }
    long id = number(number);
    return found.over().stream().filter(trial -> trial.id() == id).findFirst();
  }

  private static Optional<TrialKind> kind(@Nullable String said, FindTests.Found found) {
    if (found.bottle().isEmpty()) {
      return Optional.of(TrialKind.RESIDUE);
    }
    List<TrialKind> kinds = TrialKind.of(found.bottle().get().label().bath());
    return kinds.stream()
        .filter(kind -> kind.word().equals(said))
        .findFirst()
        .or(() -> kinds.stream().findFirst());
  }

  /** The form as it opens: what the last clip was, so that little has to be typed at the sink. */
  private static FilledForm opened(Context ctx, FindTests.Found found) {
    Map<String, String> values = new LinkedHashMap<>();
    String rolls = ctx.queryParam("rolls");
    if (rolls != null) {
      values.put("rolls", rolls);
    }
    found
        .bottle()
        .ifPresent(
            bottle -> {
              values.put("dilution", UsualClip.dilution(bottle));
              UsualClip.baseline(bottle)
                  .ifPresentOrElse(
                      baseline -> values.put("film", baseline.film()),
                      () -> values.put("fresh", "yes"));
            });
    return FilledForm.of(values);
  }

  private static long number(String text) {
    try {
      return Long.parseLong(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException("test", text, "a whole number, for example 7");
    }
  }

  private static String path(Context ctx) {
    return "/bench/test/" + TestApi.subject(ctx);
  }
}
