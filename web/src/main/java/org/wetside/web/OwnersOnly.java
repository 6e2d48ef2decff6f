package org.wetside.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wetside.web.pairing.Asker;
import org.wetside.web.pairing.Door;

/**
 * Lets in only what pages of this program ask for by a name of this machine. A page of another site
 * must not write here, nor read by pointing its own name at an address of ours.
 */
final class OwnersOnly {
  private static final Set<String> ONLY_READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> OTHERS = Set.of("cross-site", "same-site");

  private final Door door;

  OwnersOnly(Door door) {
    this.door = door;
  }

  void check(Context ctx) {
    String host = ctx.header("Host");
    if (host == null || !(Asker.isThisMachine(ctx) || door.isOwn(host, ctx))) {
      throw new ForbiddenResponse(
          "This program answers only to localhost"
              + (door.reach().isLan() ? " and the addresses of this machine" : "")
              + ", not to "
              + host
              + ".");
    }
    String origin = ctx.header("Origin");
    if ((origin != null && !isSame(origin, scheme(ctx) + host)) || isAskedByOthers(ctx)) {
      throw new ForbiddenResponse("Another page asked for this, so nothing was done.");
    }
  }

  /** A link elsewhere may lead to a page; nothing else of another page may reach in. */
  private static boolean isAskedByOthers(Context ctx) {
    boolean reads = ONLY_READING.contains(ctx.req().getMethod());
    boolean page = !ctx.path().startsWith("/api");
    boolean followed = "navigate".equals(ctx.header("Sec-Fetch-Mode"));
    return isOther(ctx.header("Sec-Fetch-Site")) && !(reads && (page || followed));
  }

  private static boolean isOther(@Nullable String site) {
    return site != null && OTHERS.contains(site);
  }

  private static String scheme(Context ctx) {
    return ctx.req().isSecure() ? "https://" : "http://";
  }

  private static boolean isSame(String origin, String own) {
    try {
      URI other = URI.create(origin);
      return own.equals(other.getScheme() + "://" + other.getAuthority());
    } catch (IllegalArgumentException notAnAddress) {
      return false;
    }
  }
}
