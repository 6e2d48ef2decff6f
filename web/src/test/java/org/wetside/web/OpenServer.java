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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;

/** A real server over a real home on a free port, for tests that ask it by HTTP. */
public final class OpenServer implements AutoCloseable {
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  private final Wetside wetside;
  private final WebServer server;
  private final HttpClient client = HttpClient.newHttpClient();
  private @Nullable Browser browser;

  private record Browser(String cookie, String token) {}

  /** Opens the home and serves it. */
  public OpenServer(Path home, Clock clock) {
    this(Wetside.open(home, clock), WebOptions.onPort(0));
  }

  /** Serves an open home, and closes it at the end. */
  public OpenServer(Wetside wetside, WebOptions options) {
    this.wetside = wetside;
    server = WebServer.start(wetside, options);
  }

  /** The open home. */
  public Wetside wetside() {
    return wetside;
  }

  /** Every route it has registered. */
  List<Endpoint> routes() {
    return server.registered();
  }

  /** The method and the address of each of them. */
  public List<List<String>> addresses() {
    return routes().stream().map(one -> List.of(one.method.name(), one.path)).toList();
  }

  /** Where other devices find it. */
  public List<String> inTheNetwork() {
    return server.addresses();
  }

  /** The whole address of a path. */
  public URI at(String path) {
    return server.address().resolve(path);
  }

  /** Asks for a path. */
  public HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(at(path)).build());
  }

  /** Posts a form as a page of this browser does, without following where it leads. */
  public HttpResponse<String> postForm(String path, String fields) {
    String marked = fields + (fields.isEmpty() ? "" : "&") + "form-token=" + formToken();
    return send(
        asBrowser(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(marked))
            .build());
  }

  /** A request that carries the cookie by which the forms of its browser are marked. */
  public HttpRequest.Builder asBrowser(String path, String... others) {
    String cookies =
        Stream.concat(Stream.of(browser().cookie()), Stream.of(others))
            .collect(Collectors.joining("; "));
    return HttpRequest.newBuilder(at(path)).header("Cookie", cookies);
  }

  /** The mark that stands in every form of this browser. */
  public String formToken() {
    return browser().token();
  }

  /** What a browser that has opened a page knows of it. */
  private Browser browser() {
    Browser known = browser;
    if (known == null) {
      HttpResponse<String> page = get("/marks");
      String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
      Matcher token = TOKEN.matcher(page.body());
      if (!token.find()) {
        throw new IllegalStateException("no form of the page is marked");
      }
      known = new Browser(cookie.substring(0, cookie.indexOf(';')), token.group(1));
      browser = known;
    }
    return known;
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
