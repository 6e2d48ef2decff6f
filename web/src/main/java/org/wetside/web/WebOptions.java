package org.wetside.web;

import java.util.Optional;
import org.wetside.core.quantity.BadValueException;

/**
 * How the server is started.
 *
 * @param port 0 for any free port, otherwise 1 to 65535
 * @param demo whether the home holds the invented scenario, which every page then says
 * @param token what another process of the same person shows to be let in without a browser
 * @param reach from where it can be asked
 */
public record WebOptions(int port, boolean demo, Optional<String> token, Reach reach) {
  private static final int HIGHEST_PORT = 65535;

  /** Refuses a port that does not exist. */
  public WebOptions {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new BadValueException("port", Integer.toString(port), "0 (any free one) to 65535");
    }
    if (reach == Reach.LAN_TLS && port == HIGHEST_PORT) {
      throw new BadValueException(
          "port", Integer.toString(port), "65534 at most, because the next one is encrypted");
    }
  }

  /** For this machine only. */
  public WebOptions(int port, boolean demo, Optional<String> token) {
    this(port, demo, token, Reach.LOOPBACK);
  }

  /** One's own data on that port. */
  public static WebOptions onPort(int port) {
    return new WebOptions(port, false, Optional.empty(), Reach.LOOPBACK);
  }

  /** Where it listens encrypted, when it does: the next port, or any when any was asked for. */
  public int securePort() {
    return port == 0 ? 0 : port + 1;
  }

  /** The same for others too. */
  public WebOptions reaching(Reach wider) {
    return new WebOptions(port, demo, token, wider);
  }
}
