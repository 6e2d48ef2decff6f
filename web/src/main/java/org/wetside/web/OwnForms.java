package org.wetside.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.Set;
import org.wetside.web.page.FormTokens;
import org.wetside.web.page.Pages;
import org.wetside.web.page.StaleFormPage;
import org.wetside.web.pairing.Asker;

/**
 * Takes no form that does not carry the mark of the browser that sends it. Under {@code /api} there
 * are no forms: there {@link OwnersOnly} looks at who asks.
 */
final class OwnForms {
  private static final Set<String> ONLY_READING = Set.of("GET", "HEAD", "OPTIONS");

  /** The header by which the command line shows the secret of the home. */
  private static final String TOKEN_HEADER = "Wetside-Token";

  private final Pages pages;
  private final byte[] token;

  OwnForms(Pages pages, Optional<String> token) {
    this.pages = pages;
    this.token = token.orElse("").getBytes(StandardCharsets.UTF_8);
  }

  void check(Context ctx) {
    boolean form = !ONLY_READING.contains(ctx.req().getMethod()) && !ctx.path().startsWith("/api/");
    if (form && !isCommand(ctx) && !FormTokens.isGood(ctx)) {
      ctx.status(HttpStatus.FORBIDDEN);
      pages.show(
          ctx,
          "stale-form.jte",
          StaleFormPage.of(pages.sheet(ctx, Optional.empty(), "Not done"), ctx));
      ctx.skipRemainingHandlers();
    }
  }

  /** Whether a command on this machine asks, which has read the secret in the home. */
  private boolean isCommand(Context ctx) {
    String shown = ctx.header(TOKEN_HEADER);
    return shown != null
        && token.length > 0
        && Asker.isThisMachine(ctx)
        && MessageDigest.isEqual(token, shown.getBytes(StandardCharsets.UTF_8));
  }
}
