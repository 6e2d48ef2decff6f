package org.wetside.web.times;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** The Times page and its interface over a real server. Own times here are invented. */
class TimesRoutesTest {
  private static final String ROTARY =
      "film=T-MAX+400&developer=D-76&dilution=stock&ei=400&vessel=rotary&temp=";
  private static final String LEAFLET =
      "grid-film=TRI-X+400&grid-developer=XTOL&grid-ei=400&grid-vessel=small&grid-source=card"
          + "&grid-down=dilutions&grid-temp-0=65F&grid-temp-1=68F&grid-head-0=stock"
          + "&grid-minutes-0-0=7:45&grid-minutes-0-1=";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    server.close();
  }

  /** Row D062 (source DV-S01). */
  @Test
  void answersTheSameAsTheCommandLine() {
    HttpResponse<String> answer = server.get("/api/time?" + ROTARY + "68F");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body())
        .contains("\"seconds\":420.0", "\"standing\":\"published\"", "DV-S01", "ormer coating");
  }

  @Test
  void saysThatThereIsNoHonestTime() {
    HttpResponse<String> answer = server.get("/api/time?" + ROTARY + "30C");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("\"exitCode\":1", "Clip test");
    HttpResponse<String> page = server.get("/times?" + ROTARY + "30C");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("No honest time", "18 °C to 24 °C", "A clip test finds it");
  }

  @Test
  void refusesAQuestionAndKeepsWhatWasTyped() {
    assertThat(server.get("/api/time?" + ROTARY + "68").statusCode()).isEqualTo(400);
    HttpResponse<String> page = server.get("/times?" + ROTARY + "68");
    assertThat(page.statusCode()).isEqualTo(422);
    assertThat(page.body()).contains("value=\"68\"", "say the unit", "value=\"T-MAX 400\"");
  }

  @Test
  void opensWithTheAnswerAndItsSteps() {
    HttpResponse<String> page = server.get("/times?" + ROTARY + "71F");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("<b>6:15</b>", "How 6:15 came about", "70 °F", "72 °F", "<svg", "<desc")
        .contains("wetside time");
    assertThat(server.get("/times").body()).contains("Ask for a <b>time</b>");
  }

  @Test
  void keepsOneLineAndShowsARefusedOneAgain() {
    String line =
        "line-film=Marsh+100&line-developer=Soup&line-dilution=stock&line-ei=100&line-vessel=small"
            + "&line-source=card&line-minutes=";
    HttpResponse<String> refused = server.postForm("/times/line", line + "9,5&line-temp=20");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"9,5\"", "decimal mark", "say the unit");
    HttpResponse<String> kept = server.postForm("/times/line", line + "9:30&line-temp=20C");
    assertThat(kept.statusCode()).isEqualTo(303);
    HttpResponse<String> page =
        server.get("/times?film=marsh+100&developer=soup&dilution=stock&ei=100&temp=20C");
    assertThat(page.body()).contains("Develop <b>9:30</b>", "card");
    assertThat(server.get("/api/times").body()).contains("own-1", "9:30");
    assertThat(server.get("/api/times?format=csv").body()).contains("Marsh 100,Soup,stock,100,20C");
    assertThat(server.postForm("/times/withdraw", "id=own-1").statusCode()).isEqualTo(303);
    assertThat(server.get("/api/times").body()).doesNotContain("own-1");
  }

  @Test
  void keepsALeafletWithoutAScript() {
    HttpResponse<String> more = server.postForm("/times/leaflet", LEAFLET + "&more=temperature");
    assertThat(more.statusCode()).isEqualTo(200);
    assertThat(more.body()).contains("grid-temp-5", "value=\"7:45\"");
    HttpResponse<String> refused = server.postForm("/times/leaflet", LEAFLET + "6.30.1");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"6.30.1\"", "aria-invalid=\"true\"");
    assertThat(server.get("/api/times").body()).doesNotContain("own-1");
    assertThat(server.postForm("/times/leaflet", LEAFLET + "6:30").statusCode()).isEqualTo(303);
    assertThat(server.get("/api/times").body()).contains("own-1", "own-2");
  }

  @Test
  void takesInAFileOrNamesEachBadRow() {
    String header = "film,developer,dilution,ei,temp,minutes,vessel,agitation,contrast,source\n";
    HttpResponse<String> refused = csv(header + "X,Y,stock,100,20,9:00,small,,,s\n");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("row 2, temp", "\"exitCode\":2");
    assertThat(csv(header + "X,Y,stock,100,20C,9:00,small,,,s\n").body()).contains("\"kept\":1");
    HttpResponse<String> noFile =
        server.send(
            server
                .asBrowser("/times/import")
                .header("Content-Type", "multipart/form-data; boundary=b")
                .POST(HttpRequest.BodyPublishers.ofString(mark() + "--b--\r\n"))
                .build());
    assertThat(noFile.statusCode()).isEqualTo(422);
    assertThat(noFile.body()).contains("No file was chosen");
    HttpResponse<String> broken = upload("film;developer\nX;Y\n");
    assertThat(broken.statusCode()).isEqualTo(422);
    assertThat(broken.body()).contains("semicolons");
    assertThat(upload(header + "Z,Y,stock,100,20C,9:00,small,,,s\n").statusCode()).isEqualTo(303);
  }

  private HttpResponse<String> csv(String text) {
    return server.send(
        HttpRequest.newBuilder(server.at("/api/times/import"))
            .header("Content-Type", "text/csv")
            .POST(HttpRequest.BodyPublishers.ofString(text))
            .build());
  }

  private String mark() {
    return "--b\r\nContent-Disposition: form-data; name=\"form-token\"\r\n\r\n"
        + server.formToken()
        + "\r\n";
  }

  private HttpResponse<String> upload(String text) {
    String body =
        mark()
            + "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"t.csv\"\r\n"
            + "Content-Type: text/csv\r\n\r\n"
            + text
            + "\r\n--b--\r\n";
    return server.send(
        server
            .asBrowser("/times/import")
            .header("Content-Type", "multipart/form-data; boundary=b")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  @Test
  void takesLinesAndLeafletsAsJson() {
    HttpResponse<String> line =
        server.postJson(
            "/api/times",
            "{\"film\":\"X\",\"developer\":\"Y\",\"minutes\":\"9:00\",\"temp\":\"20C\"}");
    assertThat(line.statusCode()).isEqualTo(200);
    assertThat(line.body()).contains("\"kept\":1");
    HttpResponse<String> leaflet =
        server.postJson(
            "/api/times/leaflet",
            "{\"common\":{\"film\":\"X\",\"developer\":\"Y\",\"ei\":\"100\",\"source\":\"s\"},"
                + "\"temperatures\":[\"20C\",\"24C\"],"
                + "\"rows\":[{\"head\":\"stock\",\"minutes\":[\"8:00\",null]}]}");
    assertThat(leaflet.statusCode()).isEqualTo(200);
    assertThat(leaflet.body()).contains("\"kept\":1");
    assertThat(server.postJson("/api/times", "{\"film\":\"X\"}").statusCode()).isEqualTo(400);
    assertThat(server.postJson("/api/times", "{\"colour\":1}").statusCode()).isEqualTo(400);
  }
}
