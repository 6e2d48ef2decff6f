package org.wetside.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.wetside.web.Routes;

/** Day, night, or as the person's system says; chosen at the foot of every page. */
public final class ThemeRoutes implements Routes {
  private final Pages pages;

  /**
   * @param pages remembers the choice
   */
  public ThemeRoutes(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.post("/theme", this::choose);
  }

  private void choose(Context ctx) {
    pages.choose(ctx, Theme.fromWord(ctx.formParam("theme")).orElse(null));
    ctx.redirect(pathOf(ctx.header("Referer")), HttpStatus.SEE_OTHER);
  }

  /** Back to the page the choice was made on, never to another site. */
  private static String pathOf(@Nullable String referer) {
    if (referer == null) {
      return "/";
    }
    try {
      URI from = URI.create(referer);
      String path = from.getRawPath();
      boolean plain = path != null && path.startsWith("/") && !path.startsWith("//");
      String query = from.getRawQuery() == null ? "" : "?" + from.getRawQuery();
      return plain ? path + query : "/";
    } catch (IllegalArgumentException notAnAddress) {
      return "/";
    }
  }
}
