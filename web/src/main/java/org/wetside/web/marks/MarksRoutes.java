package org.wetside.web.marks;

import io.javalin.config.RoutesConfig;
import java.util.Optional;
import org.wetside.web.Routes;
import org.wetside.web.page.Pages;

/** The page that explains the marks. */
public final class MarksRoutes implements Routes {
  private final Pages pages;

  /**
   * @param pages draws the page
   */
  public MarksRoutes(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/marks",
        ctx ->
            pages.show(
                ctx,
                "marks.jte",
                MarksPage.on(pages.sheet(ctx, Optional.empty(), "What the marks mean"))));
  }
}
