package org.wetside.web.pairing;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Where a request comes from, by the connection itself: what it says of that is not believed. */
public final class Asker {
  private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

  private Asker() {}

  /** Whether it comes from this machine, and asks for it by a name that only means this machine. */
  public static boolean isThisMachine(Context ctx) {
    return address(ctx.req().getRemoteAddr()).isLoopbackAddress()
        && address(ctx.req().getLocalAddr()).isLoopbackAddress()
        && isLoopbackName(ctx.header("Host"));
  }

  /** Whether the Host of a request means "this machine" on every machine, whatever the port. */
  public static boolean isLoopbackName(@Nullable String host) {
    return host != null && LOOPBACK_NAMES.contains(nameOf(host));
  }

  /** The device at the other end. */
  static InetAddress address(Context ctx) {
    return address(ctx.req().getRemoteAddr());
  }

  /** The host without its port; an IPv6 address keeps its brackets. */
  static String nameOf(String host) {
    int end = host.startsWith("[") ? host.indexOf(']') + 1 : host.indexOf(':');
    return end > 0 ? host.substring(0, end) : host;
  }

  private static InetAddress address(String figures) {
    return Subnet.address(
        figures.startsWith("[") ? figures.substring(1, figures.indexOf(']')) : figures);
  }
}
