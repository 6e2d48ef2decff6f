package org.wetside.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wetside.web.api.Problem;
import org.wetside.web.page.Pages;
import org.wetside.web.page.StaticFiles;

/** Requests that fail when it is too late to say so, on a real server. */
class FailuresTest {
  private final Failures failures = new Failures(new Pages(new StaticFiles(), false));
  private final CompletableFuture<Context> kept = new CompletableFuture<>();
  private Javalin server;

  @BeforeEach
  void open() {
    server =
        Javalin.create(
                config -> {
                  config.startup.showJavalinBanner = false;
                  config.startup.startupWatcherEnabled = false;
                  config.routes.get("/api/half", FailuresTest::failHalfWay);
                  config.routes.get("/api/whole", kept::complete);
                  failures.register(config.routes);
                })
            .start("127.0.0.1", 0);
  }

  @AfterEach
  void close() {
    server.stop();
  }

  private static void failHalfWay(Context ctx) throws IOException {
    ctx.res().getOutputStream().write("half".getBytes(StandardCharsets.UTF_8));
    ctx.res().flushBuffer();
    throw new IllegalStateException("the rest cannot be read");
  }

  @Test
  void anAnswerThatHasBegunGetsNoWordsOfOursAtItsEnd() throws Exception {
    assertThat(get("/api/half").body()).isEqualTo("half");
  }

  /** Seen when a heartbeat went to a line whose request the server had already taken back. */
  @Test
  void aRequestThatIsOverIsLeftAlone() throws Exception {
    assertThat(get("/api/whole").statusCode()).isEqualTo(200);
    Context over = kept.get(5, TimeUnit.SECONDS);
    for (int i = 0; i < 250 && !isOver(over); i++) {
      Thread.sleep(20);
    }
    assertThat(isOver(over)).isTrue();
    assertThatCode(() -> failures.answer(over, Problem.couldNot("too late")))
        .doesNotThrowAnyException();
  }

  private static boolean isOver(Context ctx) {
    try {
      ctx.res().isCommitted();
      return false;
    } catch (RuntimeException takenBack) {
      return true;
    }
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    URI address = URI.create("http://127.0.0.1:" + server.port() + path);
    return HttpClient.newHttpClient()
        .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
  }
}
