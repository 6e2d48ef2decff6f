package org.wetside.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.router.Endpoint;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The OpenAPI document held against the routes that a real server has registered. */
class ContractTest {
  private static final JsonMapper JSON = new JsonMapper();

  private @TempDir Path home;
  private OpenServer server;
  private JsonNode document;

  @BeforeEach
  void ask() {
    server = new OpenServer(home, Clock.systemUTC());
    HttpResponse<String> answer = server.get("/api/openapi.json");
    assertThat(answer.statusCode()).isEqualTo(200);
    document = JSON.readTree(answer.body());
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void everyRouteIsDescribedAndNothingElseIs() {
    List<String> registered = new ArrayList<>();
    for (Endpoint route : server.routes()) {
      if (route.path.startsWith("/api")) {
        registered.add(route.method.name().toLowerCase(Locale.ROOT) + " " + route.path);
      }
    }
    assertThat(described()).containsExactlyInAnyOrderElementsOf(registered);
  }

  @Test
  void whatStandsInBracesIsAParameterAndNothingElseIsInThePath() {
    for (var path : document.path("paths").properties()) {
      List<String> inBraces = new ArrayList<>();
      Matcher braces = Pattern.compile("\\{(\\w+)}").matcher(path.getKey());
      while (braces.find()) {
        inBraces.add(braces.group(1));
      }
      for (var operation : path.getValue().properties()) {
        List<String> declared = new ArrayList<>();
        for (JsonNode parameter : operation.getValue().path("parameters")) {
          if (parameter.path("in").asString().equals("path")) {
            declared.add(parameter.path("name").asString());
            assertThat(parameter.path("required").asBoolean()).as(path.getKey()).isTrue();
          }
        }
        assertThat(declared).as(path.getKey()).containsExactlyInAnyOrderElementsOf(inBraces);
      }
    }
  }

  @Test
  void whatIsNotDescribedIsNotThere() {
    assertThat(server.get("/api/nothing").statusCode()).isEqualTo(404);
    HttpResponse<String> misspelt = server.get("/api/mix?dilution=1%2B31&totl=256mL");
    assertThat(misspelt.statusCode()).isEqualTo(400);
    assertThat(misspelt.body()).contains("totl", "dilution, total, of, rolls, minimum");
    assertThat(server.get("/api/now?x=1").body()).contains("takes none");
  }

  /** The table of docs/http.md, row by row. */
  @Test
  void theDocumentationListsTheSameAddresses() throws IOException {
    List<String> written =
        Files.readAllLines(Path.of("..", "docs", "http.md")).stream()
            .filter(line -> line.matches("\\| [A-Z]+ \\| `/api.*"))
            .toList();
    List<String> real = new ArrayList<>();
    for (var path : document.path("paths").properties()) {
      for (var operation : path.getValue().properties()) {
        real.add(
            "| %s | `%s` | %s |"
                .formatted(
                    operation.getKey().toUpperCase(Locale.ROOT),
                    path.getKey(),
                    operation.getValue().path("summary").asString()));
      }
    }
    assertThat(written).containsExactlyInAnyOrderElementsOf(real);
  }

  /** Every parameter that is said to be required: without it the route refuses. */
  @Test
  void whatIsRequiredIsMissed() {
    int tried = 0;
    for (var path : document.path("paths").properties()) {
      for (JsonNode parameter : path.getValue().path("get").path("parameters")) {
        if (parameter.path("in").asString().equals("query")
            && parameter.path("required").asBoolean()) {
          HttpResponse<String> answer = server.get(path.getKey());
          assertThat(answer.statusCode()).as(path.getKey()).isEqualTo(400);
          assertThat(JSON.readTree(answer.body()).path("exitCode").asInt()).isEqualTo(2);
          tried++;
        }
      }
    }
    assertThat(tried).isPositive();
  }

  private List<String> described() {
    List<String> all = new ArrayList<>();
    for (var path : document.path("paths").properties()) {
      path.getValue().propertyNames().forEach(method -> all.add(method + " " + path.getKey()));
    }
    return all;
  }
}
