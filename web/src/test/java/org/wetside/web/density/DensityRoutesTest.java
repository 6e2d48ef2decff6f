package org.wetside.web.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** Instruments, tablets and pictures here are invented; pixels follow 60000 · 10^−D. */
class DensityRoutesTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    assertThat(
            server
                .postForm(
                    "/curves/tablets", form("name", "T 12", "origin", "sheet", "steps", tablet()))
                .statusCode())
        .isEqualTo(303);
    assertThat(
            server
                .postForm(
                    "/curves/instruments",
                    form("name", "flatbed", "kind", "scanner", "note", "gamma 1.0"))
                .statusCode())
        .isEqualTo(303);
  }

  @AfterEach
  void close() {
    server.close();
  }

  private static String form(String... namesAndValues) {
    List<String> fields = new ArrayList<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      fields.add(
          namesAndValues[i]
              + "="
              + URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
    }
    return String.join("&", fields);
  }

  private static String tablet() {
    StringBuilder lines = new StringBuilder("step,density\n");
    for (int step = 1; step <= 12; step++) {
      lines.append(String.format(Locale.ROOT, "%d,%.2f%n", step, Tiffs.density(step)));
    }
    return lines.toString();
  }

  private HttpResponse<String> keep(String name, byte[] bytes) {
    return server.send(
        HttpRequest.newBuilder(server.at("/api/pictures?name=" + name))
            .header("Content-Type", "image/tiff")
            .POST(HttpRequest.BodyPublishers.ofByteArray(bytes))
            .build());
  }

  private HttpResponse<String> put(String path, String json) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .PUT(HttpRequest.BodyPublishers.ofString(json))
            .build());
  }

  private static String strip() {
    return form(
        "label0",
        "strip",
        "x0",
        "0",
        "y0",
        "5",
        "width0",
        "240",
        "height0",
        "50",
        "strip",
        "strip",
        "steps",
        "12",
        "first",
        "1",
        "negative",
        "silver");
  }

  /** All twelve steps as the page would send them once the strip was divided. */
  private static String twelve(String... others) {
    List<String> fields = new ArrayList<>(List.of(others));
    for (int i = 0; i < 12; i++) {
      fields.addAll(
          List.of(
              "label" + i,
              "" + (i + 1),
              "x" + i,
              "" + (20 * i + 4),
              "y" + i,
              "5",
              "width" + i,
              "12",
              "height" + i,
              "50"));
    }
    return form(fields.toArray(String[]::new));
  }

  private void keptAndDeclared() {
    assertThat(keep("strip.tif", Tiffs.steps()).statusCode()).isEqualTo(201);
    assertThat(server.postForm("/curves/patches/strip.tif/declare", "linear=yes").statusCode())
        .isEqualTo(303);
  }

  @Test
  void fromAPictureToACalibrationToDensitiesOnPages() {
    assertThat(keep("strip.tif", Tiffs.steps()).body())
        .contains("\"widthPixels\":240", "says nothing", "\"declaredLinear\":false");
    String silent = server.get("/curves/patches/strip.tif").body();
    assertThat(silent).contains("does not say whether it is linear", "gamma 1.0");
    assertThat(silent).doesNotContain("name=\"label0\"");
    server.postForm("/curves/patches/strip.tif/declare", "linear=yes");

    HttpResponse<String> divided =
        server.postForm("/curves/patches/strip.tif", strip() + "&do=divide");
    assertThat(divided.statusCode()).isEqualTo(200);
    assertThat(divided.body())
        .contains("name=\"label11\" value=\"12\"", "name=\"x11\" value=\"224\"");

    HttpResponse<String> measured =
        server.postForm("/curves/patches/strip.tif", twelve("do", "read", "instrument", ""));
    assertThat(measured.body())
        .contains("no instrument was chosen", "name=\"seen\" value=\"step,grey", "1,53475.0");

    HttpResponse<String> over =
        server.postForm(
            "/curves/calibration",
            form("instrument", "flatbed", "seen", "step,grey\n1,53475.0\n", "note", "strip.tif"));
    assertThat(over.body()).contains("1,53475.0", "value=\"strip.tif\"", "value=\"2026-01-14\"");
    StringBuilder seen = new StringBuilder("step,grey\n");
    for (int step = 1; step <= 12; step++) {
      seen.append(step)
          .append(',')
          .append(Math.round(60000 * Math.pow(10, -Tiffs.density(step))))
          .append('\n');
    }
    assertThat(
            server
                .postForm(
                    "/curves/instruments/flatbed/calibrate",
                    form(
                        "tablet",
                        "T 12",
                        "on",
                        "2026-01-14",
                        "method",
                        "formula",
                        "seen",
                        seen.toString(),
                        "note",
                        "strip.tif"))
                .statusCode())
        .isEqualTo(303);
    assertThat(server.get("/curves/instruments/flatbed").body())
        .contains("0.05 to 1.7", "±0.03", "1.5", "the first");

    HttpResponse<String> read =
        server.postForm(
            "/curves/patches/strip.tif",
            twelve("do", "read", "instrument", "flatbed", "negative", "silver"));
    assertThat(read.statusCode()).isEqualTo(200);
    assertThat(read.body())
        .contains("read as densities by flatbed", ">0.800<", "action=\"/curves/new\"", "6,0.8");
    assertThat(server.get("/curves/patches/strip.tif").body())
        .as("the patches are remembered")
        .contains("name=\"x11\" value=\"224\"");

    HttpResponse<String> csv =
        server.postForm("/curves/patches/strip.tif/readings.csv", twelve("instrument", "flatbed"));
    assertThat(csv.headers().firstValue("Content-Type").orElseThrow()).contains("text/csv");
    assertThat(csv.body()).contains("step,density,net,mean,sd,pixels,clipped_pixels", "6,0.800,,");
  }

  @Test
  void stainedColourAndBeyondTheTabletAreRefusedOnThePageWithNothingLost() {
    keptAndDeclared();
    calibrate();
    HttpResponse<String> stained =
        server.postForm(
            "/curves/patches/strip.tif",
            twelve("do", "read", "instrument", "flatbed", "negative", "stained"));
    assertThat(stained.statusCode()).isEqualTo(422);
    assertThat(stained.body()).contains("stained", "only unstained silver", "value=\"224\"");

    String one =
        form(
            "label0",
            "12",
            "x0",
            "224",
            "y0",
            "5",
            "width0",
            "12",
            "height0",
            "50",
            "do",
            "read",
            "instrument",
            "flatbed",
            "negative",
            "silver");
    assertThat(server.postForm("/curves/patches/strip.tif", one).body())
        .contains("not read: darker than the densest usable step");
  }

  @Test
  void flareIsFoundFromAPatchNamedInTheOneField() {
    keptAndDeclared();
    calibrate();
    assertThat(server.get("/curves/patches/strip.tif").body())
        .contains("How to find the flare", "lets no light through");
    String path = "/curves/patches/strip.tif";
    String asked = "flatbed";
    assertThat(
            server.postForm(path, twelve("do", "read", "instrument", asked, "flare", "10")).body())
        .contains("it lies from 0 to below 1");
    HttpResponse<String> unknown =
        server.postForm(path, twelve("do", "read", "instrument", asked, "flare", "black"));
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(unknown.body())
        .contains("there is no patch of that label", "value=\"black\"", "value=\"224\"");
    assertThat(
            server
                .postJson(
                    "/api/instruments/flatbed/densities",
                    "{\"patches\":[{\"label\":\"7\",\"channels\":[6732.1]},"
                        + "{\"label\":\"black\",\"channels\":[3000]}],\"opaque\":\"black\"}")
                .body())
        .contains("Flare of 0.0526 of the surround's light is taken off, found from patch black.");
  }

  /** With the last two steps left out, so that the picture goes beyond it. */
  private void calibrate() {
    StringBuilder seen = new StringBuilder();
    for (int step = 1; step <= 10; step++) {
      seen.append(step)
          .append(',')
          .append(Math.round(60000 * Math.pow(10, -Tiffs.density(step))))
          .append("\\n");
    }
    HttpResponse<String> made =
        server.postJson(
            "/api/instruments/flatbed/calibrations",
            "{\"tablet\":\"t 12\",\"seen\":\"" + seen + "\"}");
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    assertThat(made.body()).contains("\"on\":\"2026-01-14\"", "\"densest\":1.4", "\"drift\":null");
  }

  @Test
  void overHttpPatchesAreMeasuredAndConverted() {
    keptAndDeclared();
    calibrate();
    HttpResponse<String> answer =
        server.postJson(
            "/api/pictures/strip.tif/patches",
            "{\"patches\":[{\"label\":\"base\",\"x\":24,\"y\":5,\"width\":12,\"height\":50},"
                + "{\"label\":\"7\",\"x\":124,\"y\":5,\"width\":12,\"height\":50}],"
                + "\"instrument\":\"flatbed\"}");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(answer.body())
        .contains(
            "\"channel\":\"grey\"",
            "\"pixels\":600",
            "\"base\":0.2",
            "\"density\":0.95,\"net\":0.75",
            "±0.03");
    assertThat(
            server
                .postJson(
                    "/api/instruments/flatbed/densities",
                    "{\"patches\":[{\"label\":\"7\",\"channels\":[6732.1]}]}")
                .body())
        .contains("\"density\":0.95", "\"net\":null");
    assertThat(
            server
                .postJson(
                    "/api/instruments/flatbed/densities",
                    "{\"patches\":[{\"label\":\"7\",\"channels\":[1,2,3]}]}")
                .body())
        .contains("calibration was made in grey");
  }

  /**
   * An answer given while the picture is still being sent breaks the connection, and is lost with
   * it: so the reason comes when all has been read, and the connection can be used again.
   */
  @Test
  void aPictureRefusedByItsNameIsReadToItsEnd() throws IOException {
    URI all = server.at("/api/pictures");
    byte[] half = new byte[1 << 16];
    try (Socket line = new Socket(all.getHost(), all.getPort())) {
      OutputStream out = line.getOutputStream();
      InputStream in = line.getInputStream();
      for (int i = 0; i < 2; i++) {
        out.write(
            ("POST /api/pictures?name=a.jpg HTTP/1.1\r\nHost: " + all.getAuthority() + "\r\n")
                .getBytes(StandardCharsets.US_ASCII));
        out.write(
            ("Content-Type: image/tiff\r\nContent-Length: " + 2 * half.length + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII));
        out.write(half);
        line.setSoTimeout(300);
        assertThatThrownBy(in::read).isInstanceOf(SocketTimeoutException.class);
        out.write(half);
        line.setSoTimeout(20_000);
        byte[] answer = new byte[4096];
        assertThat(new String(answer, 0, in.read(answer), StandardCharsets.UTF_8))
            .startsWith("HTTP/1.1 400")
            .contains("ends in .tif");
      }
    }
  }

  @Test
  void badInputIsRefusedEachInItsWords() {
    assertThat(keep("a.tif", Tiffs.eightBits()).body()).contains("8 bits", "16-bit TIFF");
    assertThat(keep("a.tif", Tiffs.jpeg()).body()).contains("JPEG", "compressed with loss");
    assertThat(keep("a.jpg", Tiffs.steps()).body()).contains("ends in .tif");
    assertThat(server.get("/api/pictures").body()).contains("\"pictures\":[]");
    assertThat(server.get("/curves/patches/none.tif").statusCode()).isEqualTo(404);
    assertThat(server.get("/curves/instruments/none").statusCode()).isEqualTo(404);
    assertThat(server.get("/curves/tablets/none").statusCode()).isEqualTo(404);

    HttpResponse<String> comma =
        server.postForm(
            "/curves/tablets", form("name", "T2", "origin", "s", "steps", "1,0.05\n2;0,2\n"));
    assertThat(comma.statusCode()).isEqualTo(422);
    assertThat(comma.body()).contains("line 2", "points as decimal marks", "2;0,2");
    assertThat(
            server
                .postForm("/curves/instruments", form("name", "flatbed", "kind", "camera"))
                .body())
        .contains("there is one of that name", "value=\"flatbed\"");
    assertThat(
            server
                .postForm(
                    "/curves/instruments/flatbed/calibrate",
                    form("tablet", "T 12", "on", "2026-01-14", "method", "formula", "seen", "1,x"))
                .body())
        .contains("pixel value of step 1", ">1,x</textarea>");

    keptAndDeclared();
    HttpResponse<String> rows =
        server.postForm(
            "/curves/patches/strip.tif",
            form(
                "label0", "1", "x0", "ten", "y0", "0", "width0", "9", "height0", "9", "label1", "2",
                "x1", "0", "y1", "0", "width1", "9", "height1", "", "do", "read"));
    assertThat(rows.statusCode()).isEqualTo(422);
    assertThat(rows.body())
        .contains("left of patch 1", "height of patch 2", "whole number", "value=\"ten\"");
    assertThat(
            server
                .postForm(
                    "/curves/patches/strip.tif",
                    form(
                        "label0", "1", "x0", "230", "y0", "0", "width0", "90", "height0", "9", "do",
                        "read"))
                .body())
        .contains("leaves the picture of 240×60", "value=\"230\"");
    assertThat(
            server
                .postForm("/curves/patches/strip.tif", strip().replace("=12", "=99") + "&do=divide")
                .body())
        .contains("number of steps", "2 to 60");
    assertThat(put("/api/pictures/none.tif", "{\"linear\":true}").statusCode()).isEqualTo(404);
  }

  @Test
  void aPictureIsSentByAFormAndSeenInEightBits() {
    byte[] bytes = Tiffs.steps();
    String head =
        "--b\r\nContent-Disposition: form-data; name=\"form-token\"\r\n\r\n"
            + server.formToken()
            + "\r\n--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"s t.tif\"\r\n"
            + "Content-Type: image/tiff\r\n\r\n";
    HttpResponse<String> sent =
        server.send(
            server
                .asBrowser("/curves/patches")
                .header("Content-Type", "multipart/form-data; boundary=b")
                .POST(
                    HttpRequest.BodyPublishers.concat(
                        HttpRequest.BodyPublishers.ofString(head),
                        HttpRequest.BodyPublishers.ofByteArray(bytes),
                        HttpRequest.BodyPublishers.ofString("\r\n--b--\r\n")))
                .build());
    assertThat(sent.statusCode()).isEqualTo(303);
    assertThat(sent.headers().firstValue("Location").orElseThrow())
        .isEqualTo("/curves/patches/s%20t.tif");
    HttpResponse<String> view =
        server.get("/curves/patches/s%20t.tif/view.jpg?x=0&y=0&width=240&height=60&size=120");
    assertThat(view.headers().firstValue("Content-Type").orElseThrow()).isEqualTo("image/jpeg");
    assertThat(
            server
                .get("/curves/patches/s%20t.tif/view.jpg?x=0&y=0&width=999&height=60&size=120")
                .statusCode())
        .isEqualTo(400);
    server.postForm("/curves/patches/s%20t.tif/remove", "");
    assertThat(server.get("/curves/patches").body()).doesNotContain("s t.tif");
  }
}
