package org.wetside.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Another device of the network, with cookies of its own: a real client over a real address. */
final class Device {
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
  private final HttpClient client;
  private final String server;

  Device(String server) {
    this(server, HttpClient.newBuilder());
  }

  Device(String server, HttpClient.Builder client) {
    this.server = server;
    this.client = client.cookieHandler(cookies).build();
  }

  /** On the first address of this machine that is not its loopback one. */
  static Device inTheNetwork(int port) {
    List<String> own = new OwnAddresses().literals();
    assertThat(own).as("a test of the network needs one").isNotEmpty();
    return new Device("http://" + own.get(0) + ":" + port);
  }

  String server() {
    return server;
  }

  HttpResponse<String> get(String path) {
    return send(request(path));
  }

  /** Sends the form of that page as a browser does. */
  HttpResponse<String> submit(String page, String path, String... fields) {
    Matcher token = TOKEN.matcher(get(page).body());
    StringBuilder body = new StringBuilder("form-token=" + (token.find() ? token.group(1) : ""));
    for (int i = 0; i < fields.length; i += 2) {
      body.append('&').append(fields[i]).append('=');
      body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  /** Lets itself in by a code. */
  void pair(String key, String name) {
    assertThat(submit("/pair?key=" + key, "/pair", "key", key, "name", name).statusCode())
        .isEqualTo(303);
  }

  HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server + path));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stop);
    }
  }

  HttpClient client() {
    return client;
  }

  /** The first line of the answer to a request whose Host is what it likes. */
  String statusWithHost(String host, String path) throws IOException {
    URI at = URI.create(server);
    InetAddress address = InetAddress.getByName(at.getHost().replaceAll("[\\[\\]]", ""));
    try (Socket socket = new Socket(address, at.getPort())) {
      String request =
          "GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return answer.substring(0, answer.indexOf('\r'));
    }
  }
}
