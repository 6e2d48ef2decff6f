package org.wetside.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.quantity.Volume;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/** Pages as somebody reads them who chose °F and fluid ounces on their device. */
class UnitsPagesTest {
  private static final String CHOSEN = "units=fahrenheit.us_fluid_ounces";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    StoredLoad.in(home);
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private String page(String path) {
    HttpResponse<String> answer =
        server.send(HttpRequest.newBuilder(server.at(path)).header("Cookie", CHOSEN).build());
    assertThat(answer.statusCode()).as(path).isEqualTo(200);
    return answer.body();
  }

  private HttpResponse<String> post(String path, String fields) {
    return server.send(
        server
            .asBrowser(path, CHOSEN)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(fields + "&form-token=" + server.formToken()))
            .build());
  }

  @Test
  void theChoiceIsRememberedByTheDevice() {
    HttpResponse<String> chosen =
        server.postForm("/units", "scale=fahrenheit&measure=us_fluid_ounces");

    assertThat(chosen.statusCode()).isEqualTo(303);
    assertThat(chosen.headers().allValues("Set-Cookie"))
        .anyMatch(cookie -> cookie.startsWith(CHOSEN + ";"));
  }

  @Test
  void whatIsNotAChoiceReadsAsMetric() {
    HttpResponse<String> chosen = server.postForm("/units", "scale=kelvin");

    assertThat(chosen.headers().allValues("Set-Cookie"))
        .anyMatch(cookie -> cookie.startsWith("units=celsius.millilitres;"));
  }

  @Test
  void aLoadIsReadInThem() {
    assertThat(page("/loads/1")).contains("68 °F", "fl oz").doesNotContain("20 °C", " mL");
    assertThat(server.get("/loads/1").body()).contains("20 °C", " mL").doesNotContain("°F");
  }

  @Test
  void aBareNumberMeansTheUnitOfItsLabel() {
    assertThat(page("/equipment")).contains("holds in all, fl oz", "it showed, °F");

    HttpResponse<String> kept =
        post(
            "/equipment/tank",
            "name=Quart&vessel=small&most-135=2&each-135=10&most-120=&each-120=&holds=20");

    assertThat(kept.statusCode()).isEqualTo(303);
    assertThat(server.wetside().keepTanks().all())
        .singleElement()
        .satisfies(
            tank ->
                assertThat(tank.holds().millilitres())
                    .isEqualTo(Volume.ofUsFluidOunces(20).millilitres(), within(1e-9)));
    assertThat(page("/equipment")).contains("20 fl oz");
  }

  @Test
  void mixingAndTemperingAnswerInThem() {
    assertThat(page("/shelf/mix?dilution=1%2B3&total=32")).contains("8 fl oz", "24 fl oz");
    assertThat(page("/shelf/temper?to=68&volume=34&cold=59&hot=122"))
        .contains("68 °F", "fl oz")
        .doesNotContain("°C", " mL");
  }

  @Test
  void theBenchIsToldWhatToShow() {
    server.postJson("/api/runs", "{\"load\":1}");

    assertThat(page("/bench/1"))
        .contains("data-scale=\"fahrenheit\"", "data-measure=\"us_fluid_ounces\"");
  }
}
