package org.wetside.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.core.plan.RollState;

/** Every form of every page carries the mark of its browser, and none is taken without it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OwnFormsTest {
  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)[\"#]");
  private static final Pattern FORM = Pattern.compile("(?s)<form ([^>]*)>(.*?)</form>");
  private static final Pattern ACTION = Pattern.compile("action=\"([^\"#]*)");
  private static final int MOST_PAGES = 150;

  private OpenServer server;

  @BeforeAll
  void live(@TempDir Path home) {
    server = new OpenServer(FillDemo.into(new Home(home), Clock.systemUTC()), WebOptions.onPort(0));
  }

  @AfterAll
  void close() {
    server.close();
  }

  @Test
  void everyFormOfEveryPageIsMarked() {
    Map<String, String> unmarked = new TreeMap<>();
    Set<String> actions = new HashSet<>();
    Set<String> seen = new HashSet<>(Set.of("/"));
    Deque<String> ahead = new ArrayDeque<>(seen);
    while (!ahead.isEmpty() && seen.size() < MOST_PAGES) {
      String path = ahead.remove();
      String page = asBrowser(path).body();
      for (Matcher form = FORM.matcher(page); form.find(); ) {
        if (form.group(1).contains("method=\"post\"")) {
          Matcher action = ACTION.matcher(form.group(1));
          // A form without an address goes to its own page.
          String to = action.find() ? action.group(1) : path;
          actions.add(to.replaceAll("\\d+", "N"));
          if (!form.group(2).contains("value=\"" + server.formToken() + "\"")) {
            unmarked.put(path, form.group(1));
          }
        }
      }
      for (Matcher link = LINK.matcher(page); link.find(); ) {
        String to = link.group(1).replace("&amp;", "&");
        if (!to.startsWith("/static") && seen.add(to)) {
          ahead.add(to);
        }
      }
    }
    assertThat(unmarked).isEmpty();
    assertThat(actions)
        .contains("/theme", "/drawer/line", "/tonight", "/equipment/tank", "/times/leaflet")
        .hasSizeGreaterThan(20);
  }

  /** Every address that takes a form, whether a page was found that sends it or not. */
  @Test
  void noFormIsTakenWithoutItsMark() {
    int tried = 0;
    for (var route : server.routes()) {
      if (!route.method.name().equals("GET") && !route.path.startsWith("/api/")) {
        String path = route.path.replaceAll("\\{[^}]*}", "1");
        HttpResponse<String> answer =
            server.send(
                server
                    .asBrowser(path)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString("name=harbour"))
                    .build());
        assertThat(answer.statusCode()).as(path).isEqualTo(403);
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(20);
  }

  @Test
  void whatWasTypedIsKeptAndCanBeSentAgain() {
    int rolls = server.wetside().findRolls().in(RollState.WAITING).size();
    String typed = "line=135+36+TRI-X+400+%40400+%22the+%3Cweir%3E+%26+mill%22";
    HttpResponse<String> refused =
        server.send(
            server
                .asBrowser("/drawer/line")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(typed + "&form-token=of-another"))
                .build());
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.body())
        .contains("Nothing was done", "What was typed", "the &lt;weir&gt; &amp; mill")
        .contains("action=\"/drawer/line\"", "value=\"" + server.formToken() + "\"")
        .doesNotContain("of-another");
    assertThat(server.wetside().findRolls().in(RollState.WAITING)).hasSize(rolls);

    assertThat(server.postForm("/drawer/line", typed).statusCode()).isEqualTo(303);
    assertThat(server.wetside().findRolls().in(RollState.WAITING)).hasSize(rolls + 1);
  }

  @Test
  void aBrowserWithoutCookiesIsToldSo() {
    HttpResponse<String> refused =
        server.send(
            HttpRequest.newBuilder(server.at("/theme"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("theme=night"))
                .build());
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.body()).contains("Allow cookies for this address");
  }

  /** The mark of one browser is worth nothing in another. */
  @Test
  void eachBrowserHasItsOwnMark() {
    HttpResponse<String> stolen =
        server.send(
            HttpRequest.newBuilder(server.at("/theme"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Cookie", "form=AAAAAAAAAAAAAAAAAAAAAA")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "theme=night&form-token=" + server.formToken()))
                .build());
    assertThat(stolen.statusCode()).isEqualTo(403);
  }

  @Test
  void theCookieIsKeptFromScriptsAndOtherSites() {
    assertThat(server.get("/marks").headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("form=")
        .contains("HttpOnly", "SameSite=Strict", "Path=/");
  }

  private HttpResponse<String> asBrowser(String path) {
    return server.send(server.asBrowser(path).build());
  }
}
