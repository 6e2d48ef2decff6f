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
import java.util.function.IntSupplier;
import org.wetside.app.Wetside;
import org.wetside.web.api.Json;
import org.wetside.web.contract.ContractRoutes;
import org.wetside.web.page.Pages;
import org.wetside.web.page.StaticFiles;
import org.wetside.web.pairing.Door;
import org.wetside.web.pairing.Doorway;
import org.wetside.web.pairing.OwnAddresses;

/**
 * Front door of the web module: serves one open home until closed, on the loopback address or
 * wider.
 */
public final class WebServer implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";
  private static final String EVERYWHERE = "::";

  private final Javalin server;
  private final List<Routes> places;

  private WebServer(Javalin server, List<Routes> places) {
    this.server = server;
    this.places = places;
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
    AtomicReference<Javalin> itself = new AtomicReference<>();
    IntSupplier port = () -> Objects.requireNonNull(itself.get()).port();
    Door door = new Door(options.reach(), new OwnAddresses(), port, port);
    List<Routes> places = new ArrayList<>(Places.of(wetside, pages, door));
    places.add(new ContractRoutes(() -> registered(Objects.requireNonNull(itself.get()))));
    Javalin server =
        Javalin.create(
            config -> {
              configure(config, options);
              guard(config.routes, pages, door, wetside, options);
              register(config.routes, files, pages, places);
            });
    itself.set(server);
    return new WebServer(server.start(), places);
  }

  /** The port it listens on. */
  public int port() {
    return server.port();
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
  }

  private static void configure(JavalinConfig config, WebOptions options) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.jetty.host = options.reach().isLan() ? EVERYWHERE : LOOPBACK;
    config.jetty.port = options.port();
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
