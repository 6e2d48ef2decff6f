package org.wetside.web.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.chemistry.Batch;
import org.wetside.web.OpenServer;

/** Mixing as a person does it on the pages, without any script. */
class FormulaPagesTest {
  private static final Instant EVENING = Instant.parse("2026-01-14T19:00:00Z");
  private static final String OWN =
      "code=Pan&kind=fixer&source=&note=&name=&lines=500+mL+water+50+C%0D%0A120+g+sodium"
          + "+thiosulfate+pentahydrate%0D%0A1+L+water+to+make";

  private OpenServer server;
  private Path folder;

  @BeforeEach
  void open(@TempDir Path home) {
    folder = home;
    server = new OpenServer(home, Clock.fixed(EVENING, ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private Batch batch() {
    return server.wetside().mixBatch().find(1).orElseThrow();
  }

  private HttpResponse<String> done(int step, String amount) {
    return server.postForm("/shelf/formulas/batches/1/steps/" + step + "/done", "amount=" + amount);
  }

  @Test
  void theListSaysWhatCanBeMixedAndWhatIsOnlyShown() {
    assertThat(server.get("/shelf/formulas").body())
        .contains("<b>22</b> formulas can be mixed", "7 are only shown", "chromium waste");
    assertThat(server.get("/shelf/formulas/CHROME-FIX").body())
        .contains("is only shown", "chromium waste")
        .doesNotContain("Begin mixing");
    assertThat(server.get("/shelf/formulas/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void aFormulaIsWeighedOutForWhatIsAtHand() {
    assertThat(
            server
                .get(
                    "/shelf/formulas/D-76?make=700&balance=0.1&have3=sodium+sulfite%2C+heptahydrate")
                .body())
        .contains("<b>700 mL</b> of D-76: this balance cannot weigh metol and borax decahydrate.")
        .contains("140.04 g", "× 2.0005, computed (CH-S53); printed 2.0 (CH-S14, p.330)")
        .contains("card.pdf?make=700");
  }

  @Test
  void whatIsRefusedStandsBesideItsFieldWithAllThatWasTyped() {
    HttpResponse<String> refused =
        server.get("/shelf/formulas/D-76?make=5&balance=0&have3=sodium+sulfite%2C+heptahydrate");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("value=\"5\"", "it must be more than 0 g", "Not weighed out")
        .containsPattern("value=\"sodium sulfite, heptahydrate\" selected");
    assertThat(server.get("/shelf/formulas/D-76?make=5").body()).contains("from 10 mL to 100 L");
  }

  @Test
  void aBatchThatCannotBeWeighedIsNotBegunAndWhatWasTypedComesBack() {
    HttpResponse<String> refused =
        server.postForm("/shelf/formulas/D-76/batches", "make=700&balance=0&measures=100mL/1mL");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("value=\"700\"", "value=\"0\"", "value=\"100mL/1mL\"")
        .contains("it must be more than 0 g");
    assertThat(server.wetside().mixBatch().all()).isEmpty();
  }

  @Test
  void aBatchIsTickedOffWithWhatReallyWentInAndStandsOnTheShelf() {
    HttpResponse<String> begun =
        server.postForm("/shelf/formulas/D-76/batches", "make=1000&balance=0.1");
    assertThat(begun.headers().firstValue("Location").orElseThrow())
        .endsWith("/shelf/formulas/batches/1");
    assertThat(server.get("/shelf/formulas/batches/1").body())
        .contains("Step 1 of 6: <b>750 mL</b> water at 52 °C", "scalds");
    assertThat(done(1, "750").statusCode()).isEqualTo(303);
    assertThat(done(2, "").statusCode()).isEqualTo(422);
    HttpResponse<String> slip = done(2, "210");
    assertThat(slip.statusCode()).isEqualTo(422);
    assertThat(slip.body()).contains("value=\"210\"", "ten times the planned 2 g");
    done(2, "2.1");
    done(3, "100");
    server.postForm("/shelf/formulas/batches/1/steps/3/undone", "");
    assertThat(batch().next().orElseThrow().position()).isEqualTo(3);
    reopen();
    assertThat(batch().steps().get(1).weighed().orElseThrow().grams()).isEqualTo(2.1);
    assertThat(batch().steps().get(1).offPercent()).isCloseTo(5, within(1e-9));
    HttpResponse<String> early =
        server.postForm(
            "/shelf/formulas/batches/1/bottle", "letter=D&holds=1000&bath=developer&role=stock");
    assertThat(early.statusCode()).isEqualTo(422);
    assertThat(server.wetside().listBottles().all()).isEmpty();
    done(3, "100.1");
    done(4, "5");
    done(5, "2");
    done(6, "1000");
    assertThat(batch().isMixed()).isTrue();
    HttpResponse<String> filled =
        server.postForm(
            "/shelf/formulas/batches/1/bottle", "letter=D&holds=1000&bath=developer&role=stock");
    assertThat(filled.statusCode()).isEqualTo(303);
    assertThat(server.wetside().mixBatch().inBottle("d").orElseThrow().id()).isEqualTo(1);
    assertThat(server.wetside().listBottles().find("D").orElseThrow().label().batch())
        .isEqualTo("1");
    assertThat(server.get("/shelf/formulas/batches/1").body())
        .contains("stands in bottle <b>D</b>");
    HttpResponse<String> again =
        server.postForm(
            "/shelf/formulas/batches/1/bottle", "letter=E&holds=1000&bath=developer&role=stock");
    assertThat(again.statusCode()).isEqualTo(422);
    assertThat(server.wetside().listBottles().all()).hasSize(1);
  }

  private void reopen() {
    server.close();
    server = new OpenServer(folder, Clock.fixed(EVENING, ZoneOffset.UTC));
  }

  @Test
  void oneOfYourOwnIsKeptMixedAndTakenAway() {
    assertThat(server.postForm("/shelf/formulas/new", OWN).statusCode()).isEqualTo(303);
    assertThat(server.get("/shelf/formulas/pan?make=500").body())
        .contains("60 g", "from memory", "Take Pan away");
    HttpResponse<String> bad =
        server.postForm("/shelf/formulas/new", OWN.replace("120+g", "some").replace("Pan", "Pot"));
    assertThat(bad.statusCode()).isEqualTo(422);
    assertThat(bad.body()).contains("some sodium thiosulfate", "value=\"Pot\"");
    assertThat(server.postForm("/shelf/formulas/new", OWN.replace("code=Pan", "code=d76")).body())
        .contains("it stands for one on file");
    server.postForm("/shelf/formulas/Pan/batches", "make=500");
    assertThat(server.postForm("/shelf/formulas/Pan/remove", "").statusCode()).isEqualTo(303);
    assertThat(server.get("/shelf/formulas/Pan").statusCode()).isEqualTo(404);
    assertThat(batch().formula()).isEqualTo("Pan");
  }

  @Test
  void whatMustNotMeetIsNeitherKeptNorMixed() {
    HttpResponse<String> refused =
        server.postForm(
            "/shelf/formulas/new",
            OWN.replace("1+L+water", "48+mL+acetic+acid+28%25%0D%0A1+L+water"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("sulfur dioxide", "CH-S50", "value=\"Pan\"");
    assertThat(server.get("/shelf/formulas/Pan").statusCode()).isEqualTo(404);
  }

  @Test
  void aPercentageSolutionIsMeasuredAndNotWeighed() {
    server.postForm("/shelf/formulas/D-76/batches", "make=700&balance=0.1");
    Batch.Step borax = batch().steps().get(4);
    assertThat(borax.ingredient()).isEqualTo("borax decahydrate, as a solution of 2 %");
    assertThat(borax.mass()).isEmpty();
    assertThat(borax.volume().orElseThrow().millilitres()).isCloseTo(70, within(1e-9));
  }
}
