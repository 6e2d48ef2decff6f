package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.plan.LoadWish;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.web.OpenServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a run offers when the developer was mixed otherwise: the answers of the times, or nothing.
 */
class DilutionsRouteTest {
  private static final String TRI_X = "135 36 TRI-X 400 @400";
  private static final String T_MAX = "135 36 T-MAX 100 @100";

  @TempDir Path home;
  private OpenServer server;

  @BeforeEach
  void open() {
    server = new OpenServer(home, Clock.systemUTC());
    server
        .wetside()
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void itOffersWhatTheTimesSayOfTheOtherDilution() {
    long run = started("D-76", TRI_X);
    JsonNode known = dilutions(run);
    assertThat(known.get("step").asInt()).isZero();
    assertThat(known.get("planned").asString()).isEqualTo("1+1");
    JsonNode stock = of(known, "stock");
    JsonNode asked =
        json(
            server.get(
                "/api/time?film=TRI-X%20400&developer=D-76&dilution=stock&ei=400&temp=20C"
                    + "&vessel=small&format=135"));
    assertThat(stock.get("seconds").asLong())
        .isEqualTo(Math.round(asked.get("seconds").asDouble()));
    assertThat(stock.get("standing").asString()).isEqualTo(asked.get("standing").asString());
    assertThat(stock.get("apart")).isEmpty();
    assertThat(known.get("others").findValuesAsString("dilution")).doesNotContain("1+1");
  }

  @Test
  void theTimeThatWasOfferedMovesTheDrainWhenItIsTaken() {
    long run = started("D-76", TRI_X);
    JsonNode stock = of(dilutions(run), "stock");
    Instant full = server.wetside().bench().look(run).moments().steps().get(0).full();
    HttpResponse<String> answer =
        send(
            run,
            "wrong-dilution-1",
            "mishap",
            ",\"step\":0,\"what\":\"wrong dilution noticed in the developer\",\"about\":\"stock\""
                + ",\"newSeconds\":"
                + stock.get("seconds"));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(server.wetside().bench().look(run).moments().steps().get(0).end())
        .isEqualTo(full.plusSeconds(stock.get("seconds").asLong()));
    assertThat(server.get("/api/runs/" + run + "/record").body()).contains("for stock");
  }

  @Test
  void twoFilmsGetTheTimeOfTheFirstAndTheDifferenceIsSaid() {
    JsonNode stock = of(dilutions(started("D-76", TRI_X, T_MAX)), "stock");
    assertThat(stock.get("apart")).hasSize(1);
    assertThat(stock.get("apart").get(0).get("film").asString()).contains("T-MAX 100");
    assertThat(stock.get("apart").get(0).get("seconds").asLong())
        .isNotEqualTo(stock.get("seconds").asLong());
  }

  @Test
  void aFilmOfWhichNothingIsKnownForbidsEveryOffer() {
    JsonNode known = dilutions(started("D-76", TRI_X, "135 36 some film @400"));
    assertThat(known.get("others")).isEmpty();
    assertThat(known.get("why").asString())
        .isEqualTo("No new time is known: finish at the planned time and note it.");
  }

  @Test
  void whereThePlannedDilutionIsNotOnFileNothingIsOffered() {
    JsonNode known = dilutions(started("D-76", "1+7", List.of(TRI_X)));
    assertThat(known.get("others")).isEmpty();
    assertThat(known.get("why").asString()).startsWith("No new time is known");
  }

  @Test
  void anUnknownDeveloperGetsThePlannedTime() {
    assertThat(dilutions(started("soup", TRI_X)).get("others")).isEmpty();
  }

  @Test
  void aRunThatIsNotThereIsNotFound() {
    assertThat(server.get("/api/runs/99/dilutions").statusCode()).isEqualTo(404);
  }

  private long started(String developer, String roll, String... more) {
    return started(developer, "1+1", concat(roll, more));
  }

  private long started(String developer, String dilution, List<String> lines) {
    List<String> numbers = new ArrayList<>();
    for (String line : lines) {
      numbers.add("A-" + (numbers.size() + 1));
      server.wetside().addRolls().lines(numbers.get(numbers.size() - 1) + " " + line).orRefuse();
    }
    long load =
        server
            .wetside()
            .makeLoad()
            .make(
                new LoadWish(
                    numbers,
                    "Double",
                    "small-tank",
                    new Recipe(developer, Dilution.parse(dilution), Temperature.ofCelsius(20)),
                    Optional.of(
                        new ChosenTime(
                            Duration.ofMinutes(9), Standing.MEASURED, "own", Optional.empty())),
                    Optional.empty(),
                    Map.of(),
                    Optional.empty(),
                    ""))
            .id();
    long run = server.wetside().startRun().of(load).card().id();
    assertThat(send(run, "first-pour", "started", ",\"confirmed\":true").statusCode())
        .isEqualTo(200);
    return run;
  }

  private static List<String> concat(String roll, String... more) {
    List<String> all = new ArrayList<>(List.of(roll));
    all.addAll(List.of(more));
    return all;
  }

  private HttpResponse<String> send(long run, String id, String kind, String more) {
    return server.postJson(
        "/api/runs/" + run + "/events",
        "{\"id\":\"%s\",\"kind\":\"%s\",\"occurredAt\":\"%s\",\"screen\":\"laptop\"%s}"
            .formatted(id, kind, Instant.now(), more));
  }

  private JsonNode dilutions(long run) {
    return json(server.get("/api/runs/" + run + "/dilutions"));
  }

  private static JsonNode of(JsonNode known, String dilution) {
    for (JsonNode other : known.get("others")) {
      if (other.get("dilution").asString().equals(dilution)) {
        return other;
      }
    }
    throw new AssertionError("no " + dilution + " in " + known);
  }

  private static JsonNode json(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JsonMapper.shared().readTree(answer.body());
  }
}
