package org.wetside.cli;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * A command's question in the words of the HTTP interface.
 *
 * @param method {@code GET}, {@code POST} or {@code DELETE}; the call knows no {@code PATCH}
 * @param target path and query, for example {@code /api/time?film=400TX}
 * @param contentType of the body; empty when there is none
 * @param body sent as UTF-8; empty when there is none
 */
record ServerRequest(String method, String target, String contentType, String body) {
  /** A question without a body. */
  static ServerRequest get(String path) {
    return new ServerRequest("GET", path, "", "");
  }

  /** A wish with a body. */
  static ServerRequest post(String path, String contentType, String body) {
    return new ServerRequest("POST", path, contentType, body);
  }

  /** A word as one part of a path. */
  static String inPath(String word) {
    return URLEncoder.encode(word.strip(), StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** The same with one more query parameter; without it when nothing was said. */
  ServerRequest with(String name, @Nullable Object value) {
    if (value == null) {
      return this;
    }
    String glue = target.indexOf('?') < 0 ? "?" : "&";
    String encoded = URLEncoder.encode(value.toString(), StandardCharsets.UTF_8);
    return new ServerRequest(method, target + glue + name + "=" + encoded, contentType, body);
  }
}
