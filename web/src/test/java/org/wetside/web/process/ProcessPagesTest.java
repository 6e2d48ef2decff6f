package org.wetside.web.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/** Processes of one's own on their pages, up to a run that is led by one. */
class ProcessPagesTest {
  private static final Units US = new Units(Units.Scale.FAHRENHEIT, Units.Measure.US_FLUID_OUNCES);

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    StoredLoad.in(home);
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private HttpResponse<String> copy() {
    return server.postForm("/processes/small-tank/copy", "name=Harbour+tank&slug=");
  }

  private FilmProcess mine() {
    return server.wetside().findProcess().of("harbour-tank");
  }

  /** The whole form of a process as a browser sends it. */
  private Map<String, String> sent(FilmProcess process) {
    return new LinkedHashMap<>(ProcessForm.of(process, Units.METRIC).form().values());
  }

  private HttpResponse<String> send(String path, Map<String, String> fields, String key) {
    fields.put("do", key);
    return server.postForm(path, encoded(fields));
  }

  @Test
  void everyBuiltInProcessHasAPage() {
    String list = server.get("/processes").body();
    assertThat(list).contains("came with the program");
    for (FilmProcess process : server.wetside().findProcess().all()) {
      assertThat(list).contains("/processes/" + process.slug());
      String page = server.get("/processes/" + process.slug()).body();
      assertThat(page).as(process.slug()).contains("<b>" + process.name() + "</b>", "Copy it");
      assertThat(page).as("built in").doesNotContain("Take it away");
    }
    assertThat(server.get("/processes/small-tank/change").statusCode()).isEqualTo(404);
    assertThat(server.get("/processes/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void aCopyIsOnesOwnAndSaysSo() {
    HttpResponse<String> copied = copy();

    assertThat(copied.statusCode()).isEqualTo(303);
    assertThat(copied.headers().firstValue("Location")).hasValue("/processes/harbour-tank/change");
    assertThat(mine().builtIn()).isFalse();
    assertThat(server.get("/processes").body()).contains("<b>One process</b> of your own");
    assertThat(server.get("/processes/harbour-tank").body()).contains("Change it", "Take it away");
    assertThat(copy().statusCode()).as("the same name twice").isEqualTo(422);
  }

  @Test
  void whatIsChangedIsKeptAndTheRestStays() {
    copy();
    Map<String, String> form = sent(mine());
    form.put("step-2-time", "7:30");

    assertThat(send("/processes/harbour-tank/change", form, "keep").statusCode()).isEqualTo(303);

    FilmProcess built = server.wetside().findProcess().of("small-tank");
    assertThat(mine().steps()).hasSameSizeAs(built.steps());
    assertThat(mine().steps().get(2).duration())
        .hasValueSatisfying(time -> assertThat(time.toSeconds()).isEqualTo(450));
    assertThat(mine().steps().get(1)).isEqualTo(built.steps().get(1));
  }

  @Test
  void stepsAreAddedMovedAndTakenOutBeforeAnythingIsKept() {
    copy();
    FilmProcess before = mine();
    Map<String, String> form = sent(before);

    String more = send("/processes/harbour-tank/change", form, "add-0").body();
    assertThat(more).contains("Step " + (before.steps().size() + 1));
    String moved = send("/processes/harbour-tank/change", sent(before), "down-0").body();
    assertThat(moved).containsPattern("name=\"step-1-kind\"[\\s\\S]*?\"developer\" selected");
    String fewer = send("/processes/harbour-tank/change", sent(before), "drop-1").body();
    assertThat(fewer).doesNotContain("Step " + before.steps().size() + "<");

    assertThat(mine()).isEqualTo(before);
  }

  @Test
  void whatCannotBeStandsBesideItsFieldAndNothingTypedIsLost() {
    copy();
    Map<String, String> form = sent(mine());
    form.put("step-0-agitation", "now and then");
    form.put("step-2-time", "soon");
    form.put("about", "for the harbour");

    HttpResponse<String> refused = send("/processes/harbour-tank/change", form, "keep");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("value=\"now and then\"", "for the harbour</textarea>")
        .contains("id=\"step-0-agitation-message\"", "id=\"step-2-time-message\"");
    assertThat(mine().about()).isNotEqualTo("for the harbour");
  }

  @Test
  void theLastStepMayGoAndAnotherIsAdded() {
    Map<String, String> form = new LinkedHashMap<>(Map.of("name", "Pier", "step-0-kind", "fixer"));

    String empty = send("/processes/new", form, "drop-0").body();
    assertThat(empty).doesNotContain("Step 1<").contains("Add a step", "value=\"Pier\"");
    form.remove("step-0-kind");
    assertThat(send("/processes/new", form, "add").body()).contains("Step 1<");
    HttpResponse<String> kept = send("/processes/new", form, "keep");
    assertThat(kept.statusCode()).isEqualTo(422);
    assertThat(kept.body()).contains("role=\"alert\"", "0 steps");
  }

  @Test
  void whatIsGoneMeanwhileIsSaidAboveTheFormThatWasTyped() {
    copy();
    Map<String, String> form = sent(mine());
    form.put("about", "for the harbour");
    server.postForm("/processes/harbour-tank/remove", "");

    HttpResponse<String> refused = send("/processes/harbour-tank/change", form, "keep");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("no process of that short name", "for the harbour</text");
    HttpResponse<String> builtIn = send("/processes/rotary/change", form, "keep");
    assertThat(builtIn.statusCode()).isEqualTo(422);
    assertThat(builtIn.body()).contains("built in and stays as it is");
  }

  /** Its bands are 18.3 to 23.9 °C, 65 to 75 °F in print (DV-S14). */
  @Test
  void temperaturesAreReadAndTypedInOnesOwnScale() {
    copy();
    FilmProcess before = mine();
    Map<String, String> form = new LinkedHashMap<>(ProcessForm.of(before, US).form().values());
    assertThat(form).containsEntry("step-0-temperature", "64.9 to 75 °F");
    assertThat(form).containsEntry("step-0-time", "from the load");
    String cookie = "units=fahrenheit.us_fluid_ounces";
    assertThat(asked("/processes/harbour-tank/change", cookie))
        .contains("temperature, °F", "value=\"64.9 to 75 °F\"", "66 to 70 °F");
    assertThat(asked("/processes/harbour-tank", cookie)).contains("64.9 to 75 °F; in the dark");

    sendWith(cookie, form);
    assertThat(mine()).as("kept as it is, with its sources").isEqualTo(before);

    form.put("step-2-temperature", "66 to 70");
    sendWith(cookie, form);
    TemperatureRange fixer = mine().steps().get(2).band().orElseThrow();
    assertThat(fixer.low().fahrenheit()).isEqualTo(66, within(1e-9));
    assertThat(fixer.high().fahrenheit()).isEqualTo(70, within(1e-9));
    assertThat(mine().steps().get(2).standing()).isEqualTo(Standing.FROM_MEMORY);
  }

  private String asked(String path, String cookie) {
    HttpRequest request = HttpRequest.newBuilder(server.at(path)).header("Cookie", cookie).build();
    return server.send(request).body();
  }

  private void sendWith(String cookie, Map<String, String> fields) {
    fields.put("do", "keep");
    fields.put("form-token", server.formToken());
    HttpRequest request =
        server
            .asBrowser("/processes/harbour-tank/change", cookie)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(encoded(fields)))
            .build();
    assertThat(server.send(request).statusCode()).isEqualTo(303);
  }

  private static String encoded(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  @Test
  void aNewOneIsWrittenFromNothing() {
    assertThat(server.get("/processes/new").body()).contains("Step 1<");
    Map<String, String> form = new LinkedHashMap<>();
    form.put("name", "Only a monobath");
    form.put("slug", "");
    form.put("about", "");
    form.put("step-0-kind", "monobath");
    form.put("step-0-bottle", "M");
    form.put("step-0-time", "6:00");

    HttpResponse<String> kept = send("/processes/new", form, "keep");

    assertThat(kept.headers().firstValue("Location")).hasValue("/processes/only-a-monobath");
    assertThat(server.get("/processes/only-a-monobath").body()).contains("<b>Only a monobath</b>");
  }

  @Test
  void aRunIsLedByItAndKeepsItsStepsWhateverBecomesOfIt() {
    copy();
    Map<String, String> form = sent(mine());
    form.put("step-2-time", "7:30");
    send("/processes/harbour-tank/change", form, "keep");
    server
        .wetside()
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
    HttpResponse<String> chosen =
        server.postForm(
            "/loads/1/change",
            "do=keep&roll=A-1&roll=A-2&tank=Double&process=harbour-tank&developer=soup"
                + "&dilution=1%2B1&temp=20C&time=9:00&source=leaflet");
    assertThat(chosen.statusCode()).as(chosen.body()).isEqualTo(303);
    assertThat(server.get("/loads/1").body())
        .contains("<a class=\"way\" href=\"/processes/harbour-tank\">Harbour tank</a>");
    assertThat(server.get("/loads/1/change").body()).contains("\"harbour-tank\" selected");
    assertThat(server.get("/processes/harbour-tank").body()).contains("load 1");
    assertThat(server.postForm("/processes/harbour-tank/remove", "").statusCode()).isEqualTo(303);
    assertThat(server.wetside().findProcess().find("harbour-tank")).isPresent();

    server.postJson("/api/runs", "{\"load\":1}");
    assertThat(server.get("/api/runs/1").body())
        .contains("\"process\":\"harbour-tank\"", "\"processName\":\"Harbour tank\"");
    String led = steps(server.get("/api/runs/1").body());
    form.put("step-2-time", "9:00");
    send("/processes/harbour-tank/change", form, "keep");

    assertThat(steps(server.get("/api/runs/1").body())).isEqualTo(led);
  }

  private static String steps(String snapshot) {
    int from = snapshot.indexOf("\"steps\":");
    return snapshot.substring(from, snapshot.indexOf("\"cues\":", from));
  }
}
