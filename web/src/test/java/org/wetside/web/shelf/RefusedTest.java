package org.wetside.web.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.web.OpenServer;

/**
 * What cannot be is refused by every form of a bottle and over HTTP, with the thing, the value and
 * the limit; what was typed comes back, and the ledger stays as it was. Every bottle is invented.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RefusedTest {
  private static final String NEW =
      "letter=N&contents=Millrace&role=stock&bath=developer&full=1000&left=800&use=back"
          + "&mixedOn=2026-01-10&openedOn=2026-01-11&note=behind+the+door&owner=the+club";

  private OpenServer server;

  @BeforeAll
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    put("D");
  }

  @AfterAll
  void close() {
    server.close();
  }

  private void put(String letter) {
    String stock = NEW.replace("letter=N", "letter=" + letter);
    assertThat(server.postForm("/shelf/new", stock).statusCode()).isEqualTo(303);
  }

  /** The page shows each field again as it was typed, whatever it held. */
  private static void typedComesBack(HttpResponse<String> page, String fields) {
    List<String> lost = new ArrayList<>();
    for (String field : fields.split("&", -1)) {
      String name = field.substring(0, field.indexOf('='));
      String typed = field.substring(field.indexOf('=') + 1).replace('+', ' ');
      boolean there =
          typed.isEmpty()
              || page.body().contains("name=\"" + name + "\" value=\"" + typed + "\"")
              || page.body().matches("(?s).*name=\"" + name + "\"[^>]*value=\"" + typed + "\".*")
              || page.body().contains("value=\"" + typed + "\" selected");
      if (!there) {
        lost.add(field);
      }
    }
    assertThat(lost).as("typed and lost").isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "full=1000|full=0|above 0",
        "full=1000|full=-5|-5",
        "full=1000|full=much|much",
        "left=800|left=1200|1200 mL\" is refused: the bottle holds 1000 mL",
        "left=800|left=-1|-1",
        "mixedOn=2026-01-10|mixedOn=2026-01-15|day of mixing \"2026-01-15\" is refused: it is still"
            + " to come",
        "openedOn=2026-01-11|openedOn=2027-01-01|day of opening \"2027-01-01\" is refused: it is"
            + " still to come",
        "mixedOn=2026-01-10|mixedOn=soon|soon",
      })
  void aBottleThatCannotBe(String right, String wrong, String said) {
    String fields = NEW.replace(right, wrong);
    HttpResponse<String> refused = server.postForm("/shelf/new", fields);

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(unescaped(refused)).contains(said);
    typedComesBack(refused, fields.replace("use=back&", ""));
    assertThat(server.wetside().listBottles().findLast("N")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "take|take=0&takeNote=a+mix|volume to take \"0 mL\" is refused: it must be above 0 mL",
        "take|take=-3&takeNote=a+mix|-3",
        "take|take=900&takeNote=a+mix|volume to take \"900 mL\" is refused: there are only 800 mL",
        "take|take=a+lot&takeNote=a+mix|a lot",
        "top-up|topUp=300&topUpOut=&topUpNote=fresh|the bottle holds 1000 mL and has 800 mL",
        "top-up|topUp=0&topUpOut=&topUpNote=fresh|above 0 mL",
        "top-up|topUp=10&topUpOut=900&topUpNote=fresh|there are only 800 mL",
        "pour-back|pourBack=300&pourBackNote=tank|the bottle holds 1000 mL and has 800 mL",
        "correct|correct=1001&correctReason=looked|\"1001 mL\" is refused: the bottle holds 1000"
            + " mL",
        "correct|correct=500&correctReason=|say it in a word or two",
        "open|openedOn=2026-01-15|day of opening \"2026-01-15\" is refused: it is still to come",
      })
  void anActThatCannotBe(String act, String fields, String said) {
    HttpResponse<String> refused = server.postForm("/shelf/D/" + act, fields);

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(unescaped(refused)).contains(said);
    typedComesBack(refused, fields);
    assertThat(ledger("D")).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"takeMl\":0}|volume to take \"0 mL\" is refused: it must be above 0 mL",
        "{\"takeMl\":-3}|-3",
        "{\"takeMl\":900}|there are only 800 mL",
        "{\"topUpMl\":300}|the bottle holds 1000 mL and has 800 mL",
        "{\"topUpMl\":10,\"outMl\":900}|there are only 800 mL",
        "{\"pourBackMl\":300}|the bottle holds 1000 mL and has 800 mL",
        "{\"correctToMl\":1001,\"note\":\"looked\"}|the bottle holds 1000 mL",
        "{\"openedOn\":\"2026-01-15\"}|it is still to come",
      })
  void theSameOverHttp(String body, String said) {
    HttpResponse<String> refused = server.postJson("/api/bottles/D/book", body);

    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body().replace("\\\"", "\"")).contains(said);
    assertThat(ledger("D")).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"fullMl\":0|above 0",
        "\"fullMl\":1000,\"leftMl\":1200|the bottle holds 1000 mL",
        "\"fullMl\":1000,\"mixedOn\":\"2026-01-15\"|it is still to come",
        "\"fullMl\":1000,\"openedOn\":\"2026-01-15\"|it is still to come",
      })
  void aNewOneOverHttp(String fields, String said) {
    HttpResponse<String> refused =
        server.postJson(
            "/api/bottles",
            "{\"letter\":\"N\",\"contents\":\"Millrace\",\"role\":\"stock\",\"bath\":\"developer\","
                + fields
                + "}");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains(said);
    assertThat(server.wetside().listBottles().findLast("N")).isEmpty();
  }

  /** Every act, after the bottle has gone: refused with the day, and what was typed is there. */
  @Test
  void aBottleThatWasDiscardedIsNotUsed() {
    put("G");
    server.postForm("/shelf/G/discard", "discardNote=brown");
    String said = "it was discarded on 2026-01-14; take another bottle";
    List<String[]> acts =
        List.of(
            new String[] {"take", "take=10&takeNote=late"},
            new String[] {"top-up", "topUp=10&topUpOut=5&topUpNote=late"},
            new String[] {"pour-back", "pourBack=10&pourBackNote=late"},
            new String[] {"correct", "correct=10&correctReason=late"},
            new String[] {"open", "openedOn=2026-01-13"},
            new String[] {"failed", "test=leader+test&testNote=late"},
            new String[] {"discard", "discardNote=late"});
    for (String[] act : acts) {
      HttpResponse<String> refused = server.postForm("/shelf/G/" + act[0], act[1]);
      assertThat(refused.statusCode()).as(act[0]).isEqualTo(422);
      assertThat(refused.body()).as(act[0]).contains(said);
      typedComesBack(refused, act[1]);
    }
    for (String body :
        List.of(
            "{\"takeMl\":10}",
            "{\"topUpMl\":10}",
            "{\"pourBackMl\":10}",
            "{\"correctToMl\":10,\"note\":\"late\"}",
            "{\"test\":\"leader\",\"passed\":false}",
            "{\"openedOn\":\"2026-01-13\"}")) {
      assertThat(server.postJson("/api/bottles/G/book", body).body()).as(body).contains(said);
    }
    assertThat(ledger("G")).hasSize(2);
  }

  private List<LedgerLine> ledger(String letter) {
    return server.wetside().listBottles().ledger(letter);
  }

  private static String unescaped(HttpResponse<String> page) {
    return page.body().replace("&#34;", "\"").replace("&quot;", "\"");
  }
}
