package org.wetside.web.mixing;

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
import org.wetside.web.OpenServer;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MixingRoutesTest {
  private OpenServer server;

  @BeforeAll
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterAll
  void close() {
    server.close();
  }

  @Test
  void mixes() {
    HttpResponse<String> answer = server.get("/api/mix?dilution=1%2B31&total=256mL");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("\"concentrateMl\":8.0", "\"waterMl\":248.0");
  }

  /** CH-S60: the powders of a package are not mixed evenly. */
  @Test
  void aPartOfAPowderPackageIsWarnedOfAndTheWholeOrManyAreNot() {
    String asked = "/api/mix?dilution=stock&of=D-76&packageMakes=1L&total=";
    assertThat(server.get(asked + "500mL").body())
        .contains("part of the powder package of D-76", "dissolve the whole package", "CH-S60");
    assertThat(server.get(asked + "1L").body()).contains("\"warnings\":[]");
    assertThat(server.get(asked + "2L").body()).contains("\"warnings\":[]");
    assertThat(server.get(asked + "1.5L").body()).contains("part of the powder package");
    assertThat(server.get("/api/mix?dilution=1%2B1&of=D-76&packageMakes=1L&total=2L").body())
        .as("a litre of stock in two litres")
        .contains("\"warnings\":[]");
    assertThat(server.get("/api/mix?dilution=stock&of=D-76&total=500mL").body())
        .as("nothing says that it is a package")
        .contains("\"warnings\":[]");
    assertThat(server.get("/api/mix?dilution=stock&of=D-76%20powder%20package&total=1L").body())
        .as("its name does, but not how much it makes")
        .contains("part of D-76 powder package");
    assertThat(server.get(asked.replace("1L", "0L") + "1L").body())
        .contains("volume that the package makes");
  }

  @Test
  void refusesWithTheShapeOfAProblem() {
    HttpResponse<String> answer = server.get("/api/mix?dilution=1:31&total=256mL");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/problem+json");
    assertThat(answer.body()).contains("\"exitCode\":2", "1+31");
  }

  @Test
  void tempersOrSaysTheNearest() {
    assertThat(server.get("/api/temper?to=20C&total=1L&cold=15C&hot=50C").body())
        .contains("\"hotMl\":144.3");
    HttpResponse<String> none = server.get("/api/temper?to=14C&total=1L&cold=17C&hot=50C");
    assertThat(none.statusCode()).isEqualTo(422);
    assertThat(none.body()).contains("\"exitCode\":1", "the nearest is 17 °C");
  }

  @Test
  void followsADriftFromJsonAndFromCsv() {
    HttpResponse<String> json =
        server.postJson(
            "/api/drift",
            "{\"readings\":[{\"seconds\":0,\"temperatureC\":20},"
                + "{\"seconds\":600,\"temperatureC\":19}],\"room\":\"15C\"}");
    assertThat(json.statusCode()).isEqualTo(200);
    HttpResponse<String> csv =
        server.send(
            HttpRequest.newBuilder(server.at("/api/drift?room=15C"))
                .header("Content-Type", "text/csv")
                .POST(HttpRequest.BodyPublishers.ofString("elapsed,temp\n0:00,20C\n10:00,19C\n"))
                .build());
    assertThat(csv.body()).isEqualTo(json.body()).contains("\"standing\":\"computed\"");
  }
}
