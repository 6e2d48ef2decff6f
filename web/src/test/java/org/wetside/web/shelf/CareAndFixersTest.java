package org.wetside.web.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.web.OpenServer;

/** Two fixers, replenishing, reuse and fixing times on their pages. Every bottle is invented. */
class CareAndFixersTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    Clock clock = Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC);
    server = new OpenServer(home, clock);
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void bottle(String letter, String contents, String bath, String use, int left) {
    String fields =
        "letter=%s&contents=%s&role=working&bath=%s&full=1000&left=%d&use=%s&mixedOn=2026-01-10"
            .formatted(letter, contents, bath, left, use);
    assertThat(server.postForm("/shelf/new", fields).statusCode()).isEqualTo(303);
  }

  private void fixers(String... letters) {
    for (String letter : letters) {
      bottle(letter, "fixer", "fixer", "back", 1000);
    }
  }

  private boolean onShelf(String letter) {
    return server.wetside().listBottles().find(letter).isPresent();
  }

  private HttpResponse<String> turn(String first, String fresh) {
    return server.postForm(
        "/shelf/fixers/turn", "first=" + first + "&fresh-" + first + "=" + fresh);
  }

  @Test
  void aPairIsMadeAndTurnedWhenTheFirstIsSpent() {
    assertThat(server.get("/shelf/fixers").body()).contains("No two fixers", "none stands");
    fixers("F", "G", "H");
    assertThat(server.postForm("/shelf/fixers", "first=F&second=F").body())
        .contains("it is the first one");
    assertThat(server.postForm("/shelf/fixers", "first=F&second=G").statusCode()).isEqualTo(303);
    assertThat(server.get("/shelf/fixers").body())
        .contains(
            "One pair of fixers: <b>F</b> first, <b>G</b> second", "Its test has not said so");

    server.postForm("/shelf/F/failed", "test=clip+test&testNote=");
    assertThat(server.get("/shelf/fixers").body())
        .contains("F is spent, turn them", "clip test failed");
    assertThat(turn("F", "").body()).contains("say the letter of its bottle");
    assertThat(onShelf("F")).isTrue();
    assertThat(turn("F", "H").statusCode()).isEqualTo(303);

    assertThat(onShelf("F")).isFalse();
    assertThat(server.get("/shelf/fixers").body()).contains("<b>G</b> first, <b>H</b> second");
  }

  @Test
  void afterTheThirdTurnBothAreDiscarded() {
    fixers("A", "B", "C", "D", "E");
    server.postForm("/shelf/fixers", "first=A&second=B");
    turn("A", "C");
    turn("B", "D");
    turn("C", "E");
    assertThat(server.get("/shelf/fixers").body()).contains("Discard both", "begin with two fresh");
    assertThat(turn("D", "").statusCode()).isEqualTo(303);
    assertThat(onShelf("D") || onShelf("E")).isFalse();
  }

  @Test
  void replenishingIsWrittenPartByPart() {
    bottle("D", "Millrace", "developer", "replenished", 1000);
    assertThat(server.get("/shelf/D").body()).contains("/shelf/D/care");
    assertThat(server.get("/shelf/D/care").body()).contains("is not on file", "leaflet");
    // 2 rolls of 30 mL into 1 L, never more than 2-3 % at once (CH-S13)
    String asked = "rolls=2&perRoll=30";
    String page = server.get("/shelf/D/care?" + asked).body();
    assertThat(page)
        .contains("<b>60 mL</b> of replenisher into D", "as you said", "name=\"part-2\"");
    int parts = page.split("name=\"part-", -1).length - 1;

    HttpResponse<String> none = server.postForm("/shelf/D/care", asked + "&parts=" + parts);
    assertThat(none.statusCode()).isEqualTo(422);
    assertThat(none.body()).contains("tick what was done", "value=\"30\"");
    HttpResponse<String> first =
        server.postForm("/shelf/D/care", asked + "&parts=" + parts + "&part-1=done");
    assertThat(first.statusCode()).isEqualTo(303);

    List<LedgerLine> book = server.wetside().listBottles().ledger("D");
    BottleEvent.ToppedUp done = (BottleEvent.ToppedUp) book.get(1).what();
    double each = 60.0 / parts;
    assertThat(done.added().millilitres()).isCloseTo(each, within(1e-9));
    assertThat(done.out().millilitres()).isCloseTo(each, within(1e-9));
    assertThat(book.get(1).note()).isEqualTo("replenished, part 1 of " + parts);
    assertThat(server.wetside().listBottles().find("D").orElseThrow().left())
        .isEqualTo(Volume.ofMillilitres(1000));
    // What is left to do is asked for again, not forgotten.
    String rest = first.headers().firstValue("Location").orElseThrow();
    assertThat(server.get(rest).body()).contains("<b>" + trimmed(60 - each) + " mL</b>");
    assertThat(server.wetside().careForBath().filmSince("D")).isEqualTo(UnitOfUse.NONE);
  }

  private static String trimmed(double millilitres) {
    return millilitres == Math.rint(millilitres)
        ? String.valueOf((long) millilitres)
        : String.valueOf(millilitres);
  }

  @Test
  void aTableOfReuseNamesTheNextRollAndItsEnd() {
    bottle("D", "D-76", "developer", "back", 1000);
    // DV-T06 p.3: rolls 1 to 4 in 1 L take 7.5 min, 11 and 12 have no time
    assertThat(server.get("/shelf/D/care").body())
        .contains("The next roll is number 1: <b>7:30</b>", "none printed", "DV-T06")
        .containsPattern("1 to 4</th><td class=\"n\">7:30</td><td>next");
    assertThat(server.get("/shelf/D/care?rolls=0").statusCode()).isEqualTo(422);
    assertThat(server.get("/shelf/Q/care").statusCode()).isEqualTo(404);
  }

  @Test
  void theFixingTimeIsForTheTemperatureThatTheFixerHas() {
    fixers("F");
    assertThat(server.get("/shelf/F").body()).contains("No clearing time was taken yet");
    String clip =
        "test=clip+test&testNote=&clearing=45s&clipFilm=TRI-X+400&clipDilution=1%2B4&clipAt=20C"
            + "&baseline=fresh";
    assertThat(server.postForm("/shelf/F/passed", clip).statusCode()).isEqualTo(303);

    assertThat(server.get("/shelf/F").body()).contains("1:30</b> at 20 °C");
    // below 20 °C × 2^((20 − T)/10) (RL29): 90 s × 2^0.5 = 127.3 s
    assertThat(server.get("/shelf/F?at=15").body())
        .contains("2:08</b> at 15 °C", "× 1.41 for the colder bath", "value=\"15\"");
    assertThat(server.get("/shelf/F?at=25C").body()).contains("1:30</b> at 25 °C");
    assertThat(server.get("/api/bottles/F?at=10C").body())
        .contains("\"fixSeconds\":180", "\"fixAtC\":10.0");
    for (String wrong : new String[] {"60", "-1", "warm"}) {
      HttpResponse<String> refused = server.get("/shelf/F?at=" + wrong);
      assertThat(refused.statusCode()).as(wrong).isEqualTo(422);
      assertThat(refused.body()).contains("value=\"" + wrong + "\"");
    }
  }
}
