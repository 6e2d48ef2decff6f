package org.wetside.web;

import io.javalin.http.Context;

/** Headers of every answer: nothing from outside, no script in the page, no framing. */
final class SafeHeaders {
  private static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " font-src 'self'; connect-src 'self'; media-src 'self'; manifest-src 'self';"
          + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private SafeHeaders() {}

  static void add(Context ctx) {
    ctx.header("Content-Security-Policy", CONTENT_POLICY);
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "same-origin");
    ctx.header("Cross-Origin-Resource-Policy", "same-origin");
  }
}
