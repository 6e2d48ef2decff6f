package org.wetside.web.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
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
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.RollState;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Volume;
import org.wetside.web.OpenServer;

/** The Plan and the pages of a load, from an empty home on. Tanks and rolls are invented. */
class PlanPagesTest {
  /** Row E017, source DV-T01: TRI-X 400 in D-76 stock, small tank, 68 °F: 6 3/4 minutes. */
  private static final String PRINTED = "6:45";

  private static final String LOAD =
      "roll=A-1&tank=Double&process=small-tank&developer=D-76&dilution=stock&temp=20C"
          + "&fill=&time=&source=&note=";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void fill() {
    server
        .wetside()
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
    server
        .wetside()
        .addRolls()
        .lines(
            String.join(
                "\n",
                "A-1 135 36 TRI-X 400 @400 \"mill\" on 2025-11-20",
                "A-2 135 36 TRI-X 400 @400 \"weir\" on 2026-01-10",
                "A-3 135 36 T-MAX P3200 @3200 \"barn\" precious on 2026-01-10"));
  }

  @Test
  void anEmptyHomeSaysTheFirstStep() {
    assertThat(server.get("/").body())
        .contains("No roll waits. Put the next one in <b>one line</b>")
        .contains("Then the bottles.", "Then the tanks.", "Then a load.");
  }

  @Test
  void aLineOnThePlanGoesIntoTheDrawerOrIsShownAgain() {
    assertThat(server.postForm("/line", "line=135+36+TRI-X+400+%40400").statusCode())
        .isEqualTo(303);
    assertThat(server.get("/").body()).contains("One roll waits");

    HttpResponse<String> refused = server.postForm("/line", "line=136+TRI-X+400");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"136 TRI-X 400\"", "136");
  }

  @Test
  void whatThereIsTonightIsKeptOrShownAgainAsTyped() {
    assertThat(
            server
                .postForm("/tonight", "kitchen=15&tap=9+C&kettle=194F&limit=22%3A00")
                .statusCode())
        .isEqualTo(303);
    assertThat(server.get("/").body()).contains("15 °C", "9 °C, 90 °C", "22:00");

    HttpResponse<String> refused =
        server.postForm("/tonight", "kitchen=warm&tap=8C&kettle=&limit=25%3A00");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"warm\"", "value=\"8C\"", "value=\"25:00\"");
    assertThat(server.get("/api/tonight").body()).contains("\"kitchenC\":15.0", "\"tapC\":9.0");
  }

  @Test
  void aLoadIsThoughtThroughBeforeItIsMade() {
    fill();

    HttpResponse<String> thought = server.postForm("/loads/new", LOAD + "&do=think");

    assertThat(thought.statusCode()).isEqualTo(200);
    assertThat(thought.body()).contains(PRINTED, "published", "Fill 300 mL");
    assertThat(server.wetside().listLoads().open()).isEmpty();
  }

  @Test
  void aLoadThatWasMadeStandsOnThePlanAndSaysHowToMixIt() {
    fill();
    server.postForm("/tonight", "kitchen=15C&tap=9C&kettle=90C&limit=22%3A00");

    HttpResponse<String> made =
        server.postForm("/loads/new", LOAD.replace("stock", "1%2B1") + "&do=keep");

    assertThat(made.statusCode()).as(made.body()).isEqualTo(303);
    assertThat(made.headers().firstValue("Location")).hasValue("/loads/1");
    assertThat(server.wetside().findRolls().byNumber("A-1").orElseThrow().state())
        .isEqualTo(RollState.LOADED);
    assertThat(server.get("/").body())
        .contains("One load to go", "150 of stock, 150 water", "Go to the Bench")
        .contains("The evening, by tank")
        .contains("<span class=\"flag solid\">Cold wash</span>", "11 K from the baths");
    assertThat(server.get("/loads/1").body())
        .contains("<b>150 mL</b> of stock or concentrate", "from the kettle", "from the tap")
        .contains("Together they have 20 °C.", "Or work at the temperature there is")
        .contains("Before the first pour", "Too little developer");
  }

  @Test
  void aRefusedLoadKeepsEverythingThatWasTyped() {
    fill();

    HttpResponse<String> refused =
        server.postForm(
            "/loads/new",
            LOAD.replace("temp=20C", "temp=80C").replace("note=", "note=Sunday") + "&do=keep");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("between 5 and 60 °C", "value=\"80C\"", "value=\"Sunday\"")
        .contains("value=\"A-1\" checked");
    assertThat(server.wetside().listLoads().open()).isEmpty();
  }

  @Test
  void rollsThatMayNotShareSayWhy() {
    fill();

    HttpResponse<String> refused = server.postForm("/loads/new", LOAD + "&roll=A-3&do=keep");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("A-1 wants " + PRINTED, "no time is within 5 % of both");
  }

  @Test
  void aLoadIsChangedAndTakenApart() {
    fill();
    server.postForm("/loads/new", LOAD + "&do=keep");

    assertThat(server.get("/loads/1/change").body())
        .contains("value=\"D-76\"", "value=\"20 °C\"", "value=\"A-1\" checked", "A-2");
    server.postForm("/loads/1/change", LOAD.replace("A-1", "A-2") + "&do=keep");
    assertThat(server.wetside().listLoads().find(1).orElseThrow().numbers()).containsExactly("A-2");

    assertThat(server.postForm("/loads/1/dissolve", "").statusCode()).isEqualTo(303);
    assertThat(server.wetside().listLoads().find(1).orElseThrow().state())
        .isEqualTo(LoadState.DISSOLVED);
    assertThat(server.get("/").body()).contains("Three rolls wait", "no load is made");
    assertThat(server.get("/loads/99").statusCode()).isEqualTo(404);
  }

  @Test
  void whatWaitsLongOrMustNotFailIsSaid() {
    fill();

    assertThat(server.get("/").body())
        .contains("A-3 must not fail", "A-1, TRI-X 400 at 400, has waited 55 days.");
  }

  @Test
  void loadsOverHttpAreMadeChangedAndTakenApart() {
    fill();
    String wish =
        "{\"rolls\":[\"A-1\"],\"tank\":\"Double\",\"developer\":\"D-76\",\"temp\":\"68F\"}";

    HttpResponse<String> made = server.postJson("/api/loads", wish);

    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    assertThat(made.headers().firstValue("Location")).hasValue("/api/loads/1");
    assertThat(made.body()).contains("\"seconds\":405.0", "\"standing\":\"published\"");
    HttpResponse<String> changed =
        server.send(
            HttpRequest.newBuilder(server.at("/api/loads/1"))
                .header("Content-Type", "application/json")
                .PUT(BodyPublishers.ofString(wish.replace("A-1", "A-2")))
                .build());
    assertThat(changed.body()).contains("\"rolls\":[\"A-2\"]");
    assertThat(server.get("/api/loads/x").statusCode()).isEqualTo(400);
    assertThat(server.get("/api/loads/7").statusCode()).isEqualTo(404);
    assertThat(server.postJson("/api/loads", "{\"rolls\":[\"A-2\"]}").body())
        .contains("\"exitCode\":2", "tank");
    HttpResponse<String> gone =
        server.send(HttpRequest.newBuilder(server.at("/api/loads/1")).DELETE().build());
    assertThat(gone.body()).contains("\"state\":\"dissolved\"");
  }
}
