package org.wetside.web.curves;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.web.OpenServer;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CurveRoutesTest {
  private OpenServer server;

  @BeforeAll
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterAll
  void close() {
    server.close();
  }

  private HttpResponse<String> post(String address, String csv) {
    return server.send(
        HttpRequest.newBuilder(server.at(address))
            .header("Content-Type", "text/csv")
            .POST(HttpRequest.BodyPublishers.ofString(csv))
            .build());
  }

  @Test
  void readsACurve() {
    HttpResponse<String> answer =
        post(
            "/api/curve?baseFog=0.20",
            "logH,density\n-3.0,0.20\n-2.5,0.40\n-2.0,0.70\n-1.0,1.30\n");

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body())
        .contains("\"isoSpeed\":null", "\"steps\":4", "band not determinable")
        .as("an answer stands no higher than the speed formula in it, which is recalled")
        .contains("\"standing\":\"from memory\"");
  }

  @Test
  void refusesReadingsThatFall() {
    HttpResponse<String> answer =
        post("/api/curve?baseFog=0.20", "logH,density\n-3.0,1.2\n-2.5,0.8\n-2.0,0.5\n");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("\"exitCode\":2", "they fall");
  }

  /** As page and command refuse them: each its own message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          densities fall  | -3.0,1.2;-2.5,0.8;-2.0,0.5;-1.5,0.2 | they fall
          two steps       | -3.0,0.2;-2.0,0.6                   | at least 3 different exposures
          base is missing | -3.0,0.4;-2.5,0.6;-2.0,0.9;-1.5,1.2 | unexposed part
          letters         | -3.0,0.2;-2.5,0.3O;-2.0,0.5         | 0.3O
          decimal comma   | -3.0,0.2;-2,5,0,30;-2.0,0.5         | decimal mark is a comma
          """)
  void badReadingsAreRefusedEachInItsWords(String what, String rows, String message) {
    String csv = "logH,density\n" + rows.replace(';', '\n') + "\n";
    HttpResponse<String> read = post("/api/curve", csv);
    assertThat(read.statusCode()).as(what).isEqualTo(400);
    assertThat(read.body()).contains("\"exitCode\":2", message);

    HttpResponse<String> kept =
        server.postJson(
            "/api/curves",
            "{\"film\":\"TRI-X 400\",\"developer\":\"D-76\",\"minutes\":\"9:40\",\"light\":\"relative\","
                + "\"readings\":\""
                + csv.replace("\n", "\\n")
                + "\"}");
    assertThat(kept.statusCode()).as(what).isEqualTo(400);
    assertThat(kept.body()).contains(message);
    assertThat(server.get("/api/curves").body()).isEqualTo("{\"curves\":[]}");
  }

  /** Row CI09 (P-255, DV-S08). */
  @Test
  void readsATimeOrSaysThatTheSeriesEnds() {
    String series = "minutes,contrast\n5,0.50\n7,0.60\n9,0.65\n11,0.70\n";
    HttpResponse<String> answer = post("/api/contrast?aim=0.65", series);
    HttpResponse<String> beyond = post("/api/contrast?aim=0.75", series);

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("\"minutes\":9.0", "\"fitRefused\":null");
    assertThat(beyond.statusCode()).isEqualTo(422);
    assertThat(beyond.body()).contains("\"exitCode\":1", "beyond the series");
  }
}
