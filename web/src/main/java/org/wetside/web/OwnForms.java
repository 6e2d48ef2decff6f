package org.wetside.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.Set;
import org.wetside.web.page.FormTokens;
import org.wetside.web.page.Pages;
import org.wetside.web.page.StaleFormPage;

/**
 * Takes no form that does not carry the mark of the browser that sends it. Under {@code /api} there
 * are no forms: there {@link OwnersOnly} looks at who asks.
 */
final class OwnForms {
  private static final Set<String> ONLY_READING = Set.of("GET", "HEAD", "OPTIONS");

  private final Pages pages;

  OwnForms(Pages pages) {
    this.pages = pages;
  }

  void check(Context ctx) {
    boolean form = !ONLY_READING.contains(ctx.req().getMethod()) && !ctx.path().startsWith("/api/");
    if (form && !FormTokens.isGood(ctx)) {
      ctx.status(HttpStatus.FORBIDDEN);
      pages.show(
          ctx,
          "stale-form.jte",
          StaleFormPage.of(pages.sheet(ctx, Optional.empty(), "Not done"), ctx));
      ctx.skipRemainingHandlers();
    }
  }
}
