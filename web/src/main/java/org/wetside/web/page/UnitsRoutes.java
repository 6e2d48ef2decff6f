package org.wetside.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;
import org.wetside.web.Routes;

/** What temperatures and volumes are read in on this device; chosen under Equipment. */
public final class UnitsRoutes implements Routes {
  private static final int A_YEAR_SECONDS = 31_536_000;

  private final Pages pages;

  /**
   * @param pages says that it was kept
   */
  public UnitsRoutes(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.post("/units", this::choose);
  }

  private void choose(Context ctx) {
    Units units =
        new Units(
            chosen(Units.Scale.values(), ctx.formParam("scale")),
            chosen(Units.Measure.values(), ctx.formParam("measure")));
    Cookie cookie = new Cookie(UnitsCookie.NAME, UnitsCookie.write(units));
    cookie.setMaxAge(A_YEAR_SECONDS);
    cookie.setSameSite(SameSite.STRICT);
    ctx.cookie(cookie);
    pages.goSaying(
        ctx,
        "/equipment",
        String.format(
            Locale.ROOT,
            "This device now reads %s and %s.",
            units.scale().sign(),
            units.measure().sign()));
  }

  /** The first, metric one, when nothing known was sent. */
  private static <E extends Enum<E>> E chosen(E[] choices, @Nullable String word) {
    return Arrays.stream(choices)
        .filter(choice -> UnitsCookie.word(choice).equals(word))
        .findFirst()
        .orElse(choices[0]);
  }
}
