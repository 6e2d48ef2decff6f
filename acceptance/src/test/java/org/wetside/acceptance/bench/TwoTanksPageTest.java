package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** Two runs on the page of either: both are shown, and one key gives the keys to the other tank. */
class TwoTanksPageTest {
  private final HttpClient http = HttpClient.newHttpClient();

  @TempDir Path home;

  @Test
  void bothTanksAreShownAndOneKeyChangesBetweenThem() throws Exception {
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC());
        WebServer server = WebServer.start(wetside, WebOptions.onPort(0));
        Browsing browsing = new Browsing()) {
      tank(server.address(), "Double", "A-1", 1);
      tank(server.address(), "Single", "B-1", 2);
      Page page = browsing.page(1280, 800);
      page.navigate(server.address().resolve("/bench/1").toString());
      Locator other = page.locator("#other-act");
      assertThat(other)
          .containsText("Single:", new LocatorAssertions.ContainsTextOptions().setTimeout(20_000));
      assertThat(page.locator("#tank")).containsText("Double");
      Object cues =
          page.evaluate(
              "async () => { const runs = await Promise.all([1, 2].map(n =>"
                  + " fetch('/api/runs/' + n).then(r => r.json())));"
                  + " const root = document.querySelector('link[rel=stylesheet]').getAttribute('href');"
                  + " const m = await import(root.slice(0, root.lastIndexOf('/')) + '/bench/hands.js');"
                  + " const all = m.mergedCues(runs);"
                  + " return [all.length === runs[0].cues.length + runs[1].cues.length,"
                  + " new Set(all.map(c => c.id)).size === all.length].join(); }");
      Assertions.assertThat(cues).isEqualTo("true,true");
      page.keyboard().press("o");
      assertThat(page.locator("#tank")).containsText("Single");
      assertThat(other).containsText("Double:");
      page.waitForTimeout(800);
      page.keyboard().press("o");
      assertThat(page.locator("#tank")).containsText("Double");
      String pictures = System.getProperty("pictures", "");
      if (!pictures.isEmpty()) {
        page.waitForTimeout(1_500);
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(pictures, "two.png")));
        page.setViewportSize(390, 844);
        page.waitForTimeout(500);
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(pictures, "two-phone.png")));
      }
    }
  }

  private void tank(URI server, String tank, String roll, int load) throws Exception {
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    post(
        server,
        "/api/tanks",
        "{\"name\":\"" + tank + "\",\"rooms\":[" + room + "],\"holdsMl\":650}");
    post(
        server,
        "/api/rolls",
        "{\"number\":\""
            + roll
            + "\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}");
    post(
        server,
        "/api/loads",
        "{\"rolls\":[\""
            + roll
            + "\"],\"tank\":\""
            + tank
            + "\",\"developer\":\"D-76\",\"dilution\":\"stock\",\"temp\":\"20C\"}");
    post(server, "/api/runs", "{\"load\":" + load + "}");
    post(
        server,
        "/api/runs/" + load + "/events",
        "{\"id\":\"start-0000000"
            + load
            + "\",\"kind\":\"started\",\"confirmed\":true,\"occurredAt\":\""
            + Instant.now()
            + "\",\"screen\":\"laptop\"}");
  }

  private void post(URI server, String path, String body) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    Assertions.assertThat(answer.statusCode()).as(path + answer.body()).isBetween(200, 299);
  }
}
