package org.wetside.web.drawer;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** The Drawer and the page of a roll over a real server. Every roll here is invented. */
class DrawerPagesTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    server.close();
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private HttpResponse<String> line(String text) {
    return server.postForm("/drawer/line", "line=" + coded(text));
  }

  @Test
  void opensWithTheAnswer() {
    assertThat(server.get("/drawer").body()).contains("The drawer is <b>empty</b>");
    assertThat(line("TM-02 135 36 TRI-X 400 @400").statusCode()).isEqualTo(303);
    line("TM-01 120 T-MAX 100 @100 \"wheel pit\" on 2026-01-03 precious");
    String page = server.get("/drawer").body();
    assertThat(page).contains("<b>Two rolls</b> wait, <b>TM-01</b> the longest", "One is precious");
    assertThat(page.indexOf("value=\"TM-01\"")).isLessThan(page.indexOf("value=\"TM-02\""));
  }

  @Test
  void aRefusedLineStandsAsItWasTyped() {
    HttpResponse<String> refused = line("135 99 TRI-X 400 \"pier\"");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("135 99 TRI-X 400 &#34;pier&#34;", "1 to 72", "aria-invalid=\"true\"");
  }

  @Test
  void aPasteWithABadLineTakesNothingAndNamesIt() {
    String paste = "\nTM-01 135 TRI-X 400\nTM-01 120 TRI-X 400\n";
    HttpResponse<String> refused = server.postForm("/drawer/many", "lines=" + coded(paste));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("<b>Line 3</b>", "already a roll of that number", "TM-01 135 TRI-X 400")
        .contains("<details open>");
    assertThat(server.get("/api/rolls").body()).doesNotContain("TM-01");
    assertThat(server.postForm("/drawer/many", "lines=").statusCode()).isEqualTo(422);
    assertThat(
            server.postForm("/drawer/many", "lines=" + coded("120 A\n120 B\n120 C")).statusCode())
        .isEqualTo(303);
  }

  @Test
  void aRefusedFormKeepsEveryFieldAndSaysWhichIsWrong() {
    HttpResponse<String> refused =
        server.postForm(
            "/drawer/roll",
            "number=TM-01&format=120&frames=&film=TRI-X+400&ei=fast&kind=b%2Fw&title=wheel"
                + "&exposed=&note=cold&precious=yes");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("id=\"ei-message\"", "value=\"fast\"", "value=\"wheel\"", ">cold</textarea>")
        .contains("value=\"yes\" checked");
    HttpResponse<String> kept =
        server.postForm("/drawer/roll", "format=120&film=TRI-X+400&kind=b%2Fw");
    assertThat(kept.statusCode()).isEqualTo(303);
  }

  @Test
  void tickedRollsLeadToALoad() {
    line("TM-01 135 TRI-X 400");
    HttpResponse<String> load = server.postForm("/drawer/load", "rolls=TM-01&rolls=TM-02");
    assertThat(load.statusCode()).isEqualTo(303);
    assertThat(load.headers().firstValue("Location").orElse(""))
        .endsWith("/loads/new?rolls=TM-01,TM-02");
    HttpResponse<String> none = server.postForm("/drawer/load", "");
    assertThat(none.statusCode()).isEqualTo(422);
    assertThat(none.body()).contains("Tick the rolls");
  }

  @Test
  void theFilmIsChosenOnThePageOfTheRoll() {
    line("TM-01 135 36 T-MAX @400");
    assertThat(server.get("/drawer").body()).contains("Which film?", "TM-01");
    assertThat(server.get("/drawer/TM-01").body()).contains("not chosen yet");
    String code = server.wetside().findFilm().candidates("T-MAX").get(0).code();
    HttpResponse<String> kept =
        server.postForm(
            "/drawer/TM-01",
            "number=TM-01&format=135&frames=36&film=T-MAX&kind=b%2Fw&ei=400&filmCode="
                + coded(code));
    assertThat(kept.statusCode()).isEqualTo(303);
    assertThat(server.get("/drawer").body()).doesNotContain("Which film?");
    HttpResponse<String> refused =
        server.postForm("/drawer/TM-01", "number=TM+1&format=135&film=T-MAX&kind=b%2Fw");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("id=\"number-message\"", "value=\"TM 1\"");
    assertThat(server.get("/drawer/TM-99").statusCode()).isEqualTo(404);
  }

  @Test
  void whoseARollIsIsSaidWhereItIsEnteredAndEdited() {
    line("TM-01 135 TRI-X 400 @400 of Anna");
    server.postForm("/drawer/roll", "number=TM-02&format=120&film=TRI-X+400&kind=b%2Fw&owner=Ben");
    assertThat(server.get("/drawer").body()).contains("of Anna", "of Ben");
    assertThat(server.get("/drawer?find=ben").body()).contains("<b>One roll</b> has <b>ben</b>");
    assertThat(server.get("/drawer/TM-01").body()).contains("name=\"owner\"", "value=\"Anna\"");
    server.postForm("/drawer/TM-01", "format=135&film=TRI-X+400&kind=b%2Fw&owner=Clara");
    assertThat(server.get("/api/rolls/TM-01").body()).contains("\"owner\":\"Clara\"");
    assertThat(server.get("/drawer?find=anna").body()).contains("<b>No rolls</b> have");
    HttpResponse<String> refused =
        server.postForm(
            "/drawer/TM-01", "format=135&film=TRI-X+400&kind=b%2Fw&owner=" + "x".repeat(81));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("id=\"owner-message\"", "at most 80 characters");
  }

  @Test
  void isFoundTakenOutAndPutBack() {
    line("TM-01 135 TRI-X 400 \"wheel pit\"");
    assertThat(server.get("/drawer?find=whe").body()).contains("<b>One roll</b> has <b>whe</b>");
    assertThat(server.postForm("/drawer/TM-01/withdraw", "").statusCode()).isEqualTo(303);
    assertThat(server.get("/drawer").body()).contains("No roll waits", "Taken out, 1");
    assertThat(server.postForm("/drawer/TM-01/return", "").statusCode()).isEqualTo(303);
    assertThat(server.get("/drawer").body()).contains("<b>One roll</b> waits");
    assertThat(server.get("/negatives/TM-01").body()).contains("nothing was done to it");
  }
}
