package org.wetside.web.pairing;

import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import java.util.function.IntSupplier;
import org.wetside.web.Reach;

/**
 * Where other screens find this server.
 *
 * @param reach from where it can be asked
 * @param own the addresses of this machine
 * @param port where it listens
 * @param securePort where it listens encrypted; the same as {@code port} when it does not
 */
public record Door(Reach reach, OwnAddresses own, IntSupplier port, IntSupplier securePort) {
  private static final Set<Integer> UNSAID = Set.of(80, 443);

  /** Whether everything but the way to the certificate is encrypted. */
  public boolean isSecure() {
    return reach == Reach.LAN_TLS;
  }

  /** Whether a request came in unencrypted where encryption is to be had. */
  boolean isInTheOpen(Context ctx) {
    return isSecure() && !ctx.req().isSecure();
  }

  /** Where screens are paired and go on, the likeliest first, without a final slash. */
  public List<String> addresses() {
    int at = isSecure() ? securePort.getAsInt() : port.getAsInt();
    String scheme = isSecure() ? "https://" : "http://";
    return own.literals().stream().map(host -> scheme + host + ":" + at).toList();
  }

  /** Where the certificate is to be had before it is trusted, likewise. */
  public List<String> openAddresses() {
    return own.literals().stream().map(host -> "http://" + host + ":" + port.getAsInt()).toList();
  }

  /** Whether a Host header means this server as it is seen from the network. */
  public boolean isOwn(String host, Context ctx) {
    int at = ctx.req().getLocalPort();
    String name = Asker.nameOf(host);
    boolean right = host.equals(name) ? UNSAID.contains(at) : host.equals(name + ":" + at);
    return reach.isLan() && right && own.isOwn(name);
  }
}
