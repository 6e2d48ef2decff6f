package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;

/**
 * Runs made for tests that take real time: made over the interface, always run 1 of its home; a
 * second tank is run 2.
 */
public final class Drill {
  private static final String QUICK_HANDS = ",\"pourIn\":\"2 s\",\"drain\":\"4 s\"";

  private final HttpClient http = HttpClient.newHttpClient();
  private final URI server;

  private Drill(URI server) {
    this.server = server;
  }

  /** One long developer with many bouts. */
  static Drill on(URI server, String bouts, Duration development)
      throws IOException, InterruptedException {
    String steps =
        step("developer", "D", "", ",\"agitation\":\"" + bouts + "\"")
            + ","
            + step("wash", "", "5:00", "");
    return of(server, steps, development.toMinutes() + ":00");
  }

  /** A second tank beside the first, with a developer of few bouts that begins now. */
  void beside(String bouts, Duration development) throws IOException, InterruptedException {
    String steps =
        step("developer", "D", "", ",\"agitation\":\"" + bouts + "\"")
            + ","
            + step("wash", "", "5:00", "");
    tank("Single", "B-1", "few", steps, development.toMinutes() + ":00");
    post("/api/runs", "{\"load\":2}");
    start(2);
  }

  /** A whole run, from developer to wash, in little more than a minute. */
  public static Drill whole(URI server) throws IOException, InterruptedException {
    String bouts = ",\"agitation\":\"4 s, then 3 s every 10 s\"";
    String steps =
        step("developer", "D", "", QUICK_HANDS + bouts)
            + ","
            + step("stop bath", "S", "0:12", QUICK_HANDS)
            + ","
            + step("fixer", "F", "0:14", QUICK_HANDS)
            + ","
            + step("wash", "", "0:10", QUICK_HANDS);
    return of(server, steps, "0:30");
  }

  private static String step(String kind, String bottle, String time, String more) {
    return "{\"kind\":\""
        + kind
        + "\""
        + (bottle.isEmpty() ? "" : ",\"bottle\":\"" + bottle + "\"")
        + (time.isEmpty() ? "" : ",\"time\":\"" + time + "\"")
        + more
        + "}";
  }

  private static Drill of(URI server, String steps, String development)
      throws IOException, InterruptedException {
    Drill drill = new Drill(server);
    drill.tank("Double", "A-1", "drill", steps, development);
    drill.post("/api/runs", "{\"load\":1}");
    return drill;
  }

  private void tank(String name, String roll, String process, String steps, String development)
      throws IOException, InterruptedException {
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    post("/api/tanks", "{\"name\":\"" + name + "\",\"rooms\":[" + room + "],\"holdsMl\":650}");
    post(
        "/api/rolls",
        "{\"number\":\""
            + roll
            + "\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}");
    post(
        "/api/processes",
        "{\"process\":\"" + process + "\",\"name\":\"" + process + "\",\"steps\":[" + steps + "]}");
    post(
        "/api/loads",
        "{\"rolls\":[\""
            + roll
            + "\"],\"tank\":\""
            + name
            + "\",\"process\":\""
            + process
            + "\",\"developer\":\"D-76\",\"temp\":\"20C\",\"source\":\"a test\",\"time\":\""
            + development
            + "\"}");
  }

  /** The first pour is now. */
  void start() throws IOException, InterruptedException {
    start(1);
  }

  private void start(int run) throws IOException, InterruptedException {
    post(
        "/api/runs/" + run + "/events",
        "{\"id\":\"start-0000000"
            + run
            + "\",\"kind\":\"started\",\"confirmed\":true,\"occurredAt\":\""
            + Instant.now()
            + "\",\"screen\":\"laptop\"}");
  }

  private void post(String path, String body) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).as(path + ": " + answer.body()).isBetween(200, 299);
  }
}
