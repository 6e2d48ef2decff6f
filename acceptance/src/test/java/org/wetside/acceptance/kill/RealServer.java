package org.wetside.acceptance.kill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;

/** {@code wetside serve} as a process of its own. */
final class RealServer {
  private final Process process;
  private final URI address;
  private final HttpClient client = HttpClient.newHttpClient();

  private RealServer(Process process, URI address) {
    this.process = process;
    this.address = address;
  }

  /** Starts it on a home and waits until it says where it is. */
  static RealServer start(Path home) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.wetside.cli.Main",
                "serve",
                "--port",
                "0",
                "--home",
                home.toString())
            .redirectErrorStream(true)
            .start();
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    StringBuilder all = new StringBuilder();
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      all.append(line).append('\n');
      if (line.startsWith("Wetside is at ")) {
        return new RealServer(process, URI.create(line.substring("Wetside is at ".length())));
      }
    }
    throw new IllegalStateException("the server did not start: " + all);
  }

  /** SIGKILL: no hook runs, nothing is said goodbye to. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor();
  }

  String get(String path) throws IOException, InterruptedException {
    return client
        .send(
            HttpRequest.newBuilder(address.resolve(path)).build(),
            HttpResponse.BodyHandlers.ofString())
        .body();
  }

  /** The status and body of a post of JSON. */
  HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
    return client.send(posting(path, json), HttpResponse.BodyHandlers.ofString());
  }

  /** The same without waiting: whoever kills the server meanwhile may get no answer. */
  CompletableFuture<HttpResponse<String>> postLater(String path, String json) {
    return client.sendAsync(posting(path, json), HttpResponse.BodyHandlers.ofString());
  }

  private HttpRequest posting(String path, String json) {
    return HttpRequest.newBuilder(address.resolve(path))
        .header("Content-Type", "application/json")
        .POST(HttpRequest.BodyPublishers.ofString(json))
        .build();
  }
}
