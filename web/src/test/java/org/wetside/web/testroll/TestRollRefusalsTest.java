package org.wetside.web.testroll;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.web.OpenServer;

/** Requests about test rolls that cannot be meant: each is named, and nothing changes. */
class TestRollRefusalsTest {
  private static final String ROLL =
      "{'film':'TRI-X 400','index':'400','developer':'D-76','metered':'1/60@f8','middle':'8min'}";
  private static final String ONE = "/api/testrolls/1";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    assertThat(send("POST", "/api/testrolls", ROLL).statusCode()).isEqualTo(201);
  }

  @AfterEach
  void close() {
    server.close();
  }

  /** Sends JSON written with single quotes. */
  private HttpResponse<String> send(String method, String path, String json) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(json.replace('\'', '"')))
            .build());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          PUT  |                   | {'film':'TRI-X 400','metered':'1/60@f8','middle':'8min'}  | exposure index
          PUT  |                   | {}                                                        | metered exposure
          PUT  | /steps/leader     | {'remark':'x'}                                            | remark
          PUT  | /steps/leader     | []                                                        | body
          PUT  | /steps/leader     | null                                                      | it holds nothing
          PUT  | /steps/develop-2  | {}                                                        | how long
          PUT  | /pieces/1         | {'time':'0:00'}                                           | development time
          PUT  | /pieces/1         | {'time':'25h'}                                            | development time
          PUT  | /pieces/1         | {'temp':'20 parsec'}                                      | 20 parsec
          PUT  | /pieces/1         | {'day':'14.1.2026'}                                       | year-month-day
          PUT  | /pieces/1         | {'day':'2026-02-30'}                                      | 2026-02-30
          PUT  | /pieces/1/readings | {'readings':[{'frame':11,'first':'0.3'}]}                | frames 1 to 10
          PUT  | /pieces/1/readings | {'readings':[{'frame':2,'first':'0.3000000000000000001'}]} | at most 20 characters
          PUT  | /pieces/1/readings | {'readings':[{'first':'0.3'}]}                           | frame of a reading
          PUT  | /pieces/1/readings | {'readings':[null]}                                      | frame of a reading
          PUT  | /pieces/1/readings | {'readings':'0.3'}                                       | body
          PUT  | /pieces/1/readings | {'curve':'perhaps'}                                      | perhaps
          """)
  void isRefusedWithItsReasonAndNothingChanges(
      String method, String under, String body, String said) {
    String before = server.get(ONE).body();
    HttpResponse<String> answer = send(method, ONE + (under == null ? "" : under), body);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains(said);
    assertThat(server.get(ONE).body()).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource({
    "GET,/api/testrolls/2",
    "PUT,/api/testrolls/2",
    "DELETE,/api/testrolls/2",
    "GET,/api/testrolls/one",
    "GET,/api/testrolls/9999999999999999999",
    "PUT,/api/testrolls/2/steps/leader",
    "DELETE,/api/testrolls/2/steps/leader",
    "PUT,/api/testrolls/2/pieces/1",
    "PUT,/api/testrolls/2/pieces/1/readings",
    "PUT,/api/testrolls/1/pieces/0",
    "PUT,/api/testrolls/1/pieces/0/readings",
  })
  void whatIsNotThereIsNotFound(String method, String path) {
    HttpResponse<String> answer = send(method, path, method.equals("PUT") ? "{}" : "");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(404);
    assertThat(answer.body()).contains("test roll");
  }

  @Test
  void aNoteHasItsLimit() {
    String before = server.get(ONE).body();
    String longNote = "{'note':'" + "x".repeat(401) + "'}";
    assertThat(send("PUT", ONE + "/steps/card", longNote).body()).contains("401", "at most 400");
    assertThat(send("PUT", ONE + "/pieces/1", longNote).body()).contains("401", "at most 400");
    assertThat(server.get(ONE).body()).as("not developed either").isEqualTo(before);
  }

  @Test
  void everyRefusedFrameIsNamedAtOnceAndKept() {
    send("PUT", ONE + "/pieces/1", "{}");
    HttpResponse<String> refused =
        send(
            "PUT",
            ONE + "/pieces/1/readings",
            "{'curve':true,'readings':[{'frame':3,'first':'0,31'},{'frame':4,'second':'thin'}]}");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains("frame 3", "0,31", "comma", "frame 4", "thin", "what was typed is kept");
    assertThat(server.get(ONE).body()).contains("0,31", "thin", "\"curve\":null");
    assertThat(server.get("/api/curves").body()).contains("\"curves\":[]");
  }

  @Test
  void aPlanSaysWhatItNeedsAndKnowsNoOtherWord() {
    assertThat(server.get("/api/testrolls/plan").body()).contains("metered exposure");
    assertThat(server.get("/api/testrolls/plan?metered=1/60@f8&middle=8min&iso=400").statusCode())
        .isEqualTo(400);
    assertThat(server.get("/api/testrolls/plan?metered=1/4000@f16&middle=8min").body())
        .contains("less light");
    assertThat(server.get("/api/testrolls/plan?metered=1/60@f8&middle=8min&frames=24").body())
        .contains("log H 1.20");
  }
}
