package org.wetside.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.router.Endpoint;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.wetside.app.Wetside;
import org.wetside.web.api.Json;
import org.wetside.web.contract.ContractRoutes;
import org.wetside.web.page.Pages;
import org.wetside.web.page.StaticFiles;
import org.wetside.web.pairing.Door;
import org.wetside.web.pairing.Doorway;

/**
 * Front door of the web module: serves one open home until closed, on the loopback address or
 * wider.
 */
public final class WebServer implements AutoCloseable {
  private final Javalin server;
  private final List<Routes> places;
  private final Connections connections;

  private WebServer(Javalin server, List<Routes> places, Connections connections) {
    this.server = server;
    this.places = places;
    this.connections = connections;
  }

  /**
   * Starts serving.
   *
   * @param wetside the open home; stays open until the server is closed, and is not closed by it
   * @throws io.javalin.util.JavalinBindException when the port is taken
   */
  public static WebServer start(Wetside wetside, WebOptions options) {
    StaticFiles files = new StaticFiles();
    Pages pages = new Pages(files, options.demo());
    Connections connections = new Connections(wetside, options);
    AtomicReference<Javalin> itself = new AtomicReference<>();
    List<Routes> places = new ArrayList<>(Places.of(wetside, pages));
    places.addAll(connections.routes(wetside, pages));
    places.add(new ContractRoutes(() -> registered(Objects.requireNonNull(itself.get()))));
    Javalin server =
        Javalin.create(
            config -> {
              configure(config);
              connections.configure(config.jetty);
              guard(config.routes, pages, connections.door(), wetside, options);
              register(config.routes, files, pages, places);
            });
    itself.set(server);
    try {
      return new WebServer(server.start(), places, connections);
    } catch (RuntimeException notStarted) {
      connections.close();
      throw notStarted;
    }
  }

  /** The port it listens on. */
  public int port() {
    return connections.port();
  }

  /** Where other screens find it, the likeliest first; empty when only this machine can ask. */
  public List<String> addresses() {
    return connections.door().reach().isLan() ? connections.door().addresses() : List.of();
  }

  /** Where a browser on this machine finds it. */
  public URI address() {
    return URI.create("http://localhost:" + port() + "/");
  }

  /** Every route there is, pages and interface. */
  List<Endpoint> registered() {
    return registered(server);
  }

  private static List<Endpoint> registered(Javalin server) {
    return server.unsafe.internalRouter.allHttpHandlers().stream()
        .map(one -> one.endpoint)
        .filter(one -> one.method.isHttpMethod())
        .toList();
  }

  /** Stops listening; requests under way are answered first. */
  @Override
  public void close() {
    places.forEach(Routes::close);
    server.stop();
    connections.close();
  }

  private static void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = CompressionStrategy.GZIP;
    config.http.prefer405over404 = true;
    config.router.ignoreTrailingSlashes = true;
    config.jsonMapper(new Json());
  }

  private static void guard(
      RoutesConfig routes, Pages pages, Door door, Wetside wetside, WebOptions options) {
    routes.before(SafeHeaders::add);
    routes.before(new OwnersOnly(door)::check);
    routes.before(new Doorway(wetside, pages, door)::check);
    routes.before(new OwnForms(pages, options.token())::check);
  }

  private static void register(
      RoutesConfig routes, StaticFiles files, Pages pages, List<Routes> places) {
    routes.get("/static/{mark}/<name>", files::serve);
    routes.get("/bench-worker.js", ctx -> files.serveUnmarked(ctx, "bench/bench-worker.js"));
    routes.get("/favicon.ico", ctx -> ctx.redirect(files.root() + "/mark.svg"));
    new Failures(pages).register(routes);
    for (Routes place : places) {
      place.register(routes);
    }
  }
}
