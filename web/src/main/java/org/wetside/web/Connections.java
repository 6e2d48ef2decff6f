package org.wetside.web;

import io.javalin.config.JettyConfig;
import java.util.List;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.web.page.Pages;
import org.wetside.web.pairing.CertificateRoutes;
import org.wetside.web.pairing.Door;
import org.wetside.web.pairing.Encryption;
import org.wetside.web.pairing.OwnAddresses;
import org.wetside.web.pairing.PairRoutes;
import org.wetside.web.pairing.ScreensApi;
import org.wetside.web.pairing.ScreensRoutes;
import org.wetside.web.paper.LabelRoutes;
import org.wetside.web.paper.SheetRoutes;

/** Where the server listens: plain, and beside it encrypted when that was asked for. */
final class Connections implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";

  private final WebOptions options;
  private final @Nullable Encryption encryption;
  private final Door door;
  private @Nullable ServerConnector plain;
  private @Nullable ServerConnector secure;

  Connections(Wetside wetside, WebOptions options) {
    this.options = options;
    OwnAddresses own = new OwnAddresses();
    encryption = options.reach() == Reach.LAN_TLS ? Encryption.start(wetside, own) : null;
    door = new Door(options.reach(), own, this::port, this::securePort);
  }

  Door door() {
    return door;
  }

  int port() {
    return plain == null ? options.port() : plain.getLocalPort();
  }

  private int securePort() {
    return secure == null ? port() : secure.getLocalPort();
  }

  /** The pages and the interface about who else may ask. */
  List<Routes> routes(Wetside wetside, Pages pages) {
    return List.of(
        new PairRoutes(wetside, pages),
        new ScreensRoutes(wetside, pages, door),
        new ScreensApi(wetside, door),
        new CertificateRoutes(wetside, pages, door, encryption),
        new SheetRoutes(wetside, door),
        new LabelRoutes(wetside, door));
  }

  void configure(JettyConfig jetty) {
    jetty.addConnector(
        (server, http) -> {
          ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
          connector.setPort(options.port());
          if (!options.reach().isLan()) {
            connector.setHost(LOOPBACK);
          }
          plain = connector;
          return connector;
        });
    if (encryption != null) {
      jetty.addConnector((server, http) -> secured(server, http, encryption));
    }
  }

  private ServerConnector secured(Server server, HttpConfiguration http, Encryption encryption) {
    HttpConfiguration https = new HttpConfiguration(http);
    // which host may be asked for is decided for both connectors in one place, OwnersOnly
    https.addCustomizer(new SecureRequestCustomizer(false));
    ServerConnector connector =
        new ServerConnector(server, encryption.context(), new HttpConnectionFactory(https));
    connector.setPort(options.securePort());
    secure = connector;
    return connector;
  }

  @Override
  public void close() {
    if (encryption != null) {
      encryption.close();
    }
  }
}
