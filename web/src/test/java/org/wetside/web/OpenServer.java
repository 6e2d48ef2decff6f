package org.wetside.web;

import io.javalin.router.Endpoint;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.wetside.app.Wetside;

/** A real server over a real home on a free port, for tests that ask it by HTTP. */
public final class OpenServer implements AutoCloseable {
  private final Wetside wetside;
  private final WebServer server;
  private final HttpClient client = HttpClient.newHttpClient();

  /** Opens the home and serves it. */
  public OpenServer(Path home, Clock clock) {
    wetside = Wetside.open(home, clock);
    server = WebServer.start(wetside, WebOptions.onPort(0));
  }

  /** The open home. */
  public Wetside wetside() {
    return wetside;
  }

  /** Every route it has registered. */
  List<Endpoint> routes() {
    return server.registered();
  }

  /** The whole address of a path. */
  public URI at(String path) {
    return server.address().resolve(path);
  }

  /** Asks for a path. */
  public HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(at(path)).build());
  }

  /** Posts a form, without following where it leads. */
  public HttpResponse<String> postForm(String path, String fields) {
    return send(
        HttpRequest.newBuilder(at(path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(fields))
            .build());
  }

  /** Posts JSON. */
  public HttpResponse<String> postJson(String path, String json) {
    return send(
        HttpRequest.newBuilder(at(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json))
            .build());
  }

  /** Sends any request. */
  public HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stop);
    }
  }

  @Override
  public void close() {
    server.close();
    wetside.close();
  }
}
