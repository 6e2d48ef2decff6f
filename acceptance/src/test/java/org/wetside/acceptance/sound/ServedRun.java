package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** A real server with one run at its Bench, led by a clock that is set by hand. */
final class ServedRun implements AutoCloseable {
  final HandTime time = new HandTime();
  final Wetside wetside;

  private final WebServer server;
  private final HttpClient http = HttpClient.newHttpClient();
  private int events;

  ServedRun(Path home) throws IOException, InterruptedException {
    wetside = Wetside.open(home, time);
    wetside.benchWith(time);
    server = WebServer.start(wetside, WebOptions.onPort(0));
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    post("/api/tanks", "{\"name\":\"Double\",\"rooms\":[" + room + "],\"holdsMl\":650}");
    post(
        "/api/rolls",
        "{\"number\":\"A-1\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}");
    post(
        "/api/loads",
        "{\"rolls\":[\"A-1\"],\"tank\":\"Double\",\"process\":\"small-tank\","
            + "\"developer\":\"D-76\",\"temp\":\"20C\",\"source\":\"a test\",\"time\":\"9:00\"}");
    post("/api/runs", "{\"load\":1}");
  }

  URI at(String path) {
    return server.address().resolve(path);
  }

  /** Sends an event of the run, as it is pressed now. */
  HttpResponse<String> press(String kind, String more) throws IOException, InterruptedException {
    String id = "event-" + String.format("%08d", ++events);
    return post(
        "/api/runs/1/events",
        "{\"id\":\"%s\",\"kind\":\"%s\",\"occurredAt\":\"%s\",\"screen\":\"ear\",\"confirmed\":true%s}"
            .formatted(id, kind, time.instant(), more));
  }

  HttpResponse<byte[]> get(String path, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request = HttpRequest.newBuilder(at(path)).GET();
    if (headers.length > 0) {
      request.headers(headers);
    }
    return http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  /** What is left of the run from that moment, as a path. */
  static String track(String ending, Instant from) {
    return "/api/runs/1/track." + ending + "?from=" + from;
  }

  private HttpResponse<String> post(String path, String body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(at(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).as(path + ": " + answer.body()).isBetween(200, 299);
    return answer;
  }

  @Override
  public void close() {
    server.close();
    wetside.close();
  }
}
