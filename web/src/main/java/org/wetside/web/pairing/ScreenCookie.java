package org.wetside.web.pairing;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;

/**
 * The key of a paired screen, in a cookie no script reads and no other site sends. It is named by
 * the port: browsers give the cookies of one host to all its ports, and two homes may be served.
 */
final class ScreenCookie {
  private static final int A_YEAR_SECONDS = 31_536_000;

  private ScreenCookie() {}

  static Optional<String> read(Context ctx) {
    return Optional.ofNullable(ctx.cookie(name(ctx))).filter(key -> !key.isBlank());
  }

  static void write(Context ctx, String key) {
    Cookie cookie = new Cookie(name(ctx), key);
    cookie.setMaxAge(A_YEAR_SECONDS);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    cookie.setSecure(ctx.req().isSecure());
    ctx.cookie(cookie);
  }

  private static String name(Context ctx) {
    return "screen-" + ctx.req().getLocalPort();
  }
}
