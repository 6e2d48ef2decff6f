package org.wetside.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WebServerTest {
  private static final Pattern STYLE =
      Pattern.compile("href=\"(/static/[0-9a-f]{8}/wetside.css)\"");

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
  void aPageOpensWithItsAnswerAndNamesThePlaces() {
    HttpResponse<String> page = server.get("/marks");

    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(
            page.headers()
                .firstValue("Content-Type")
                .orElseThrow()
                .toLowerCase(java.util.Locale.ROOT))
        .isEqualTo("text/html;charset=utf-8");
    assertThat(page.body())
        .contains("<h1 class=\"say\">What is <b>blue</b> has happened.")
        .contains("<a href=\"/drawer\">Drawer</a>")
        .doesNotContain(" style=")
        .doesNotContain("data-theme");
  }

  @Test
  void noScriptAndNothingFromOutsideIsAllowed() {
    assertThat(server.get("/marks").headers().firstValue("Content-Security-Policy").orElseThrow())
        .contains("default-src 'none'", "script-src 'self'")
        .doesNotContain("unsafe");
  }

  @Test
  void styleStandsUnderAnAddressThatMayBeKeptForEver() {
    Matcher style = STYLE.matcher(server.get("/marks").body());
    assertThat(style.find()).isTrue();

    HttpResponse<String> css = server.get(style.group(1));
    assertThat(css.statusCode()).isEqualTo(200);
    assertThat(css.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable");
    assertThat(css.body()).contains("--paper: #f8f9f6").contains(".say {");

    HttpResponse<String> older = server.get("/static/00000000/wetside.css");
    assertThat(older.headers().firstValue("Cache-Control")).hasValue("no-cache");
  }

  @Test
  void aStaticNameCannotLeaveItsFolder() {
    assertThat(server.get("/static/0/%2e%2e/logback.xml").statusCode()).isIn(400, 404);
    assertThat(server.get("/static/0/..%2flogback.xml").statusCode()).isIn(400, 404);
    assertThat(server.get("/static/0/nothing.css").statusCode()).isEqualTo(404);
  }

  @Test
  void anAddressWithNothingSaysSoInOurWords() {
    HttpResponse<String> page = server.get("/cellar");
    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.body()).contains("There is nothing at this address.", "Nothing was changed.");

    HttpResponse<String> json = server.get("/api/cellar");
    assertThat(json.statusCode()).isEqualTo(404);
    assertThat(json.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/problem+json");
    assertThat(json.body()).contains("\"exitCode\":2", "\"status\":404", "\"title\":\"not found\"");
  }

  @Test
  void headAnswersLikeGetWithoutBody() {
    HttpResponse<String> head =
        server.send(
            HttpRequest.newBuilder(server.at("/marks"))
                .method("HEAD", HttpRequest.BodyPublishers.noBody())
                .build());
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
  }

  @Test
  void aPageOfAnotherSiteCannotWriteHere() {
    HttpRequest foreign =
        server
            .asBrowser("/theme")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Origin", "http://elsewhere.example")
            .POST(
                HttpRequest.BodyPublishers.ofString("theme=night&form-token=" + server.formToken()))
            .build();
    HttpResponse<String> answer = server.send(foreign);
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
  }

  @Test
  void theThemeIsRememberedAndLeadsBack() {
    HttpRequest choose =
        server
            .asBrowser("/theme")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Origin", server.at("/").toString().replaceAll("/$", ""))
            .header("Referer", server.at("/times?film=x").toString())
            .POST(
                HttpRequest.BodyPublishers.ofString("theme=night&form-token=" + server.formToken()))
            .build();
    HttpResponse<String> answer = server.send(choose);
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("/times?film=x");
    assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow()).startsWith("theme=night");

    HttpRequest again =
        HttpRequest.newBuilder(server.at("/marks")).header("Cookie", "theme=night").build();
    assertThat(server.send(again).body()).contains("data-theme=\"night\"");
  }
}
