package org.wetside.web.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.keeping.CheckData;
import org.wetside.app.keeping.KeptBackup;
import org.wetside.web.OpenServer;

/** Backups on their page and over HTTP. */
class BackupPagesTest {
  private static final String PAGE = "/equipment/backups";

  @TempDir Path home;
  private OpenServer server;

  @BeforeEach
  void open() {
    server = new OpenServer(home, Clock.system(ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void addRoll() {
    assertThat(server.wetside().addRolls().lines("135 36 TRI-X 400 @400 \"quay\"").orRefuse())
        .hasSize(1);
  }

  @Test
  void withoutABackupThePageSaysWhenTheFirstComes() {
    assertThat(server.get(PAGE).body()).contains("There is <b>no backup</b> yet.");
    assertThat(server.get("/equipment").body()).contains("href=\"/equipment/backups\"");
  }

  @Test
  void aHomeWithoutDataHasNothingToBackUpOrCheck() {
    HttpResponse<String> made =
        server.send(
            HttpRequest.newBuilder(server.at("/api/backups"))
                .POST(HttpRequest.BodyPublishers.noBody())
                .build());
    assertThat(made.statusCode()).isEqualTo(409);
    assertThat(made.body()).contains("has no data yet");
    assertThat(server.get("/api/check").statusCode()).isEqualTo(409);
  }

  @Test
  void oneIsMadeShownAndDownloaded() throws IOException, InterruptedException {
    addRoll();
    assertThat(server.postForm(PAGE, "").statusCode()).isEqualTo(303);
    KeptBackup kept = server.wetside().keptBackups().all().get(0);
    assertThat(server.get(PAGE).body())
        .contains("The last backup was made <b>just now</b>.", kept.name(), "asked for");
    for (String way : new String[] {PAGE, "/api/backups"}) {
      HttpResponse<byte[]> download =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(server.at(way + "/" + kept.name())).build(),
                  HttpResponse.BodyHandlers.ofByteArray());
      assertThat(download.headers().firstValue("Content-Disposition").orElseThrow())
          .isEqualTo("attachment; filename=\"" + kept.name() + "\"");
      assertThat(download.body()).isEqualTo(Files.readAllBytes(kept.file()));
    }
    assertThat(CheckData.of(kept.file()).rolls()).isEqualTo(1);
  }

  @Test
  void onlyBackupsAreGivenOut() throws IOException {
    addRoll();
    server.postForm(PAGE, "");
    Files.writeString(home.resolve("backups").resolve("diary.txt"), "private");
    for (String name : new String[] {"diary.txt", "..%2Fwetside.db", "by-hand-.%2F..%2Fx.db"}) {
      assertThat(server.get(PAGE + "/" + name).statusCode()).as(name).isIn(400, 404);
      assertThat(server.get("/api/backups/" + name).statusCode()).as(name).isIn(400, 404);
    }
  }

  @Test
  void overHttpTheyAreListedAndTheDataChecked() {
    addRoll();
    HttpResponse<String> made =
        server.send(
            HttpRequest.newBuilder(server.at("/api/backups"))
                .POST(HttpRequest.BodyPublishers.noBody())
                .build());
    assertThat(made.statusCode()).isEqualTo(201);
    assertThat(made.body()).contains("\"kind\":\"by-hand\"");
    assertThat(server.get("/api/backups").body()).contains("\"failure\":null", "by-hand-");
    assertThat(server.get("/api/check").body()).contains("\"clean\":true", "\"rolls\":1");
  }

  @Test
  void aFailedDailyBackupIsTheFirstThingSaid() throws IOException, InterruptedException {
    Files.writeString(home.resolve("backups"), "a file where the folder should be");
    addRoll();
    assertThat(server.get("/").body()).doesNotContain("No backup");
    server.wetside().dailyBackup().look();
    assertThat(server.get("/").body()).contains("No backup", "href=\"/equipment/backups\"");
    assertThat(server.get(PAGE).body()).contains("Today’s backup could not be made.");
    assertThat(server.get("/drawer").statusCode()).isEqualTo(200);
  }
}
