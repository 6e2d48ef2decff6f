package org.wetside.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.app.Wetside;
import org.wetside.app.screens.Invitation;
import org.wetside.app.screens.Screen;
import org.wetside.web.OpenServer;
import org.wetside.web.Reach;
import org.wetside.web.WebOptions;
import org.wetside.web.bench.StoredLoad;

class DoorwayTest {
  private @TempDir Path home;
  private OpenServer server;
  private Device phone;

  @BeforeEach
  void open() {
    server =
        new OpenServer(
            Wetside.open(home, Clock.systemUTC()), WebOptions.onPort(0).reaching(Reach.LAN));
    phone = Device.inTheNetwork(server.at("/").getPort());
  }

  @AfterEach
  void close() {
    server.close();
  }

  /** Every address the server has, tried by a device that is not paired. */
  @Test
  void anUnpairedDeviceGetsNothingButThePairingPage() {
    server.postForm("/drawer/line", "line=135+36+TRI-X+400+%40400+%22the+weir%22");
    int refused = 0;
    for (List<String> route : server.addresses()) {
      String path = route.get(1).replaceAll("[{<][^}>]*[}>]", "1");
      if (path.startsWith("/pair")
          || path.startsWith("/certificate")
          || path.equals("/favicon.ico")) {
        continue;
      }
      HttpResponse<String> answer =
          phone.send(phone.request(path).method(route.get(0), HttpRequest.BodyPublishers.noBody()));
      assertThat(answer.statusCode()).as(path).isEqualTo(403);
      if (path.startsWith("/api")) {
        assertThat(answer.body()).as(path).contains("\"title\":\"not paired\"");
      } else {
        assertThat(answer.body())
            .as(path)
            .contains("This screen is not paired yet.")
            .doesNotContain("the weir", "/drawer", "TRI-X");
      }
      refused++;
    }
    assertThat(refused).isGreaterThan(80);
    assertThat(phone.get("/nowhere").statusCode()).isEqualTo(403);
  }

  @Test
  void itGetsWhatThePairingPageIsDrawnWithAndNoScript() {
    String page = phone.get("/pair").body();
    assertThat(page).contains("<h1").doesNotContain("<script", "<nav");
    String style = page.replaceAll("(?s).*href=\"(/static/[^\"]+/wetside.css)\".*", "$1");
    assertThat(phone.get(style).statusCode()).isEqualTo(200);
    String script = style.replace("wetside.css", "bench/bench.js");
    assertThat(phone.get(script).statusCode()).isEqualTo(403);
    assertThat(server.get(script).statusCode()).isEqualTo(200);
  }

  @Test
  void aCodeLetsItInAndItSeesEverything() {
    Invitation code = server.wetside().pairScreen().invite();
    assertThat(phone.get("/pair?key=" + code.key()).body())
        .contains("One press lets this screen in");

    HttpResponse<String> paired =
        phone.submit("/pair?key=" + code.key(), "/pair", "key", code.key(), "name", "phone");
    assertThat(paired.statusCode()).isEqualTo(303);
    assertThat(paired.headers().allValues("Set-Cookie"))
        .anyMatch(
            cookie ->
                cookie.matches("screen-\\d+=[A-Za-z0-9_-]{43};.*")
                    && cookie.contains("HttpOnly")
                    && cookie.contains("SameSite=Strict"));

    assertThat(phone.get("/").statusCode()).isEqualTo(200);
    assertThat(phone.get("/api/tonight").statusCode()).isEqualTo(200);
    assertThat(
            phone.submit("/drawer", "/drawer/line", "line", "135 36 TRI-X 400 @400").statusCode())
        .isEqualTo(303);
    assertThat(phone.get("/pair").statusCode()).isEqualTo(303);
  }

  @Test
  void eachBadCodeHasItsOwnAnswer() {
    assertThat(tried("00000000")).contains("No code is shown at the moment");
    Invitation code = server.wetside().pairScreen().invite();
    assertThat(tried("wrong")).contains("That is not the code that is shown. Four tries are left");
    phone.pair(code.key(), "phone");
    Device second = Device.inTheNetwork(server.at("/").getPort());
    phone = second;
    assertThat(tried(code.key())).contains("has let a screen in already");
    Invitation before = server.wetside().pairScreen().invite();
    server.wetside().pairScreen().invite();
    assertThat(tried(before.key())).contains("That code ended at");
    String last = "";
    for (int i = 0; i < 5; i++) {
      last = tried("wrong");
    }
    assertThat(last).contains("Wrong codes were tried too often");
    assertThat(server.wetside().findScreens().all()).hasSize(1);
  }

  @Test
  void aMissingNameUsesTheCodeNotUp() {
    Invitation code = server.wetside().pairScreen().invite();
    HttpResponse<String> refused =
        phone.submit("/pair", "/pair", "code", code.figures(), "name", " ");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("1 to 40 characters", code.figures());
    phone.pair(code.key(), "phone");
  }

  @Test
  void aRemovedScreenIsToldSoAndSeesNothingMore() {
    phone.pair(server.wetside().pairScreen().invite().key(), "phone");
    Screen screen = server.wetside().findScreens().all().get(0);
    assertThat(server.get("/screens").body()).contains("One screen is let in: <b>phone</b>");
    assertThat(server.postForm("/screens/remove", "screen=" + screen.id()).statusCode())
        .isEqualTo(303);
    HttpResponse<String> after = phone.get("/drawer");
    assertThat(after.statusCode()).isEqualTo(403);
    assertThat(after.body()).contains("This screen, phone, was removed on");
    assertThat(phone.get("/api/rolls").statusCode()).isEqualTo(403);
    assertThat(server.postForm("/screens/remove", "screen=" + screen.id()).statusCode())
        .isEqualTo(400);
  }

  /** A line that was open when its screen was removed says nothing of what happens after. */
  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void anOpenLineOfARemovedScreenEnds() throws Exception {
    long run = server.wetside().startRun().of(StoredLoad.in(home)).card().id();
    phone.pair(server.wetside().pairScreen().invite().key(), "phone");
    HttpResponse<InputStream> line =
        phone
            .client()
            .send(
                phone
                    .request("/api/runs/" + run + "/stream")
                    .header("Accept", "text/event-stream")
                    .build(),
                HttpResponse.BodyHandlers.ofInputStream());
    assertThat(line.statusCode()).isEqualTo(200);
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(line.body(), StandardCharsets.UTF_8))) {
      List<String> before = new ArrayList<>();
      for (String one = lines.readLine(); !one.isEmpty(); one = lines.readLine()) {
        before.add(one);
      }
      assertThat(before).anyMatch(one -> one.endsWith("snapshot"));
      server.wetside().removeScreen().remove(server.wetside().findScreens().all().get(0).id());
      assertThat(lines.lines().filter(one -> one.startsWith("event"))).isEmpty();
    }
  }

  @Test
  void anUnknownKeyIsToldApartFromNone() {
    HttpResponse<String> answer =
        phone.send(
            phone
                .request("/")
                .header("Cookie", "screen-" + server.at("/").getPort() + "=of-another-home"));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("paired with other data");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "localhost",
        "127.0.0.1",
        "evil.example",
        "evil.example:PORT",
        "localhost:PORT",
        "ADDRESS",
        "ADDRESS:1"
      })
  void aForgedHostIsRefusedToAPairedScreenToo(String forged) throws IOException {
    String port = Integer.toString(server.at("/").getPort());
    String host =
        forged.replace("PORT", port).replace("ADDRESS", URI.create(phone.server()).getHost());
    assertThat(phone.statusWithHost(host, "/pair")).contains(" 403 ");
  }

  @Test
  void theAddressAndTheNameOfThisMachineAreGood() throws IOException {
    int port = server.at("/").getPort();
    assertThat(phone.statusWithHost(URI.create(phone.server()).getAuthority(), "/pair"))
        .contains(" 200 ");
    for (String name : new OwnAddresses().names()) {
      assertThat(phone.statusWithHost(name + ":" + port, "/pair")).as(name).contains(" 200 ");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "POST, /api/tanks, Origin, http://evil.example",
    "GET, /api/tanks, Origin, http://evil.example",
    "GET, /drawer, Origin, http://evil.example",
    "GET, /drawer, Origin, null",
    "POST, /api/tanks, Sec-Fetch-Site, cross-site",
    "GET, /api/tanks, Sec-Fetch-Site, cross-site",
    "GET, /api/tanks, Sec-Fetch-Site, same-site",
  })
  void aForgedOriginIsRefusedToAPairedScreenToo(
      String method, String path, String header, String value) {
    phone.pair(server.wetside().pairScreen().invite().key(), "phone");
    HttpResponse<String> answer =
        phone.send(
            phone
                .request(path)
                .header(header, value)
                .method(method, HttpRequest.BodyPublishers.ofString("{}")));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("Another page asked for this");
  }

  @Test
  void itsOwnOriginIsGood() {
    phone.pair(server.wetside().pairScreen().invite().key(), "phone");
    HttpResponse<String> answer =
        phone.send(
            phone
                .request("/api/tonight")
                .header("Origin", phone.server())
                .header("Sec-Fetch-Site", "same-origin"));
    assertThat(answer.statusCode()).isEqualTo(200);
  }

  @Test
  void withoutBeingOpenedItIsBoundToThisMachine() {
    try (OpenServer closed =
        new OpenServer(
            Wetside.open(home.resolve("other"), Clock.systemUTC()), WebOptions.onPort(0))) {
      assertThat(closed.get("/marks").statusCode()).isEqualTo(200);
      Device outside = Device.inTheNetwork(closed.at("/").getPort());
      assertThatThrownBy(() -> outside.get("/pair"))
          .isInstanceOf(UncheckedIOException.class)
          .hasCauseInstanceOf(java.net.ConnectException.class);
      assertThat(closed.get("/screens").body()).contains("wetside serve --lan");
      assertThat(closed.postJson("/api/screens/code", "").statusCode()).isEqualTo(409);
    }
  }

  private String tried(String code) {
    HttpResponse<String> answer = phone.submit("/pair", "/pair", "code", code, "name", "phone");
    assertThat(answer.statusCode()).isIn(403, 429);
    return answer.body();
  }
}
