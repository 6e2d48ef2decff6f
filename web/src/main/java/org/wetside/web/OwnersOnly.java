package org.wetside.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only what this machine's own browser or command line asks for itself. A page of another
 * site must not write here, nor read by pointing its own name at the loopback address.
 */
final class OwnersOnly {
  private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
  private static final Set<String> ONLY_READING = Set.of("GET", "HEAD", "OPTIONS");

  private OwnersOnly() {}

  static void check(Context ctx) {
    String host = ctx.header("Host");
    if (host == null || !OWN_NAMES.contains(nameOf(host))) {
      throw new ForbiddenResponse("This program answers only to localhost, not to " + host + ".");
    }
    if (!ONLY_READING.contains(ctx.req().getMethod())) {
      checkOrigin(ctx.header("Origin"), ctx.header("Sec-Fetch-Site"), host);
    }
  }

  private static void checkOrigin(@Nullable String origin, @Nullable String site, String host) {
    boolean own = origin == null || sameHost(origin, host);
    boolean foreign = "cross-site".equals(site) || "same-site".equals(site);
    if (!own || foreign) {
      throw new ForbiddenResponse("Another page asked for this, so nothing was done.");
    }
  }

  private static boolean sameHost(String origin, String host) {
    try {
      return host.equals(URI.create(origin).getAuthority());
    } catch (IllegalArgumentException notAnAddress) {
      return false;
    }
  }

  /** The host without its port; an IPv6 address keeps its brackets. */
  private static String nameOf(String host) {
    int end = host.startsWith("[") ? host.indexOf(']') + 1 : host.indexOf(':');
    return end > 0 ? host.substring(0, end) : host;
  }
}
