package org.wetside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wetside.app.home.ServerAddress;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Asks the server that runs on the same home, over loopback. */
final class ServerCall {
  /** The header that carries the secret of the home. */
  static final String TOKEN_HEADER = "Wetside-Token";

  private static final int CONNECT_MILLIS = 2_000;
  private static final int ANSWER_MILLIS = 60_000;

  private static final JsonMapper JSON =
      JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

  private final ServerAddress server;

  ServerCall(ServerAddress server) {
    this.server = server;
  }

  /** What a refused request says of itself. */
  private record Problem(
      @Nullable String title, @Nullable String detail, @Nullable Integer exitCode) {}

  /**
   * The server's answer.
   *
   * @return empty when nothing listens there any more, so that the caller opens the home itself
   * @throws ServerRefusalException when the server refuses, with its sentence and exit code
   */
  <V> Optional<V> ask(ServerRequest request, Class<V> view) {
    return asked(request, answer -> JSON.readValue(textOf(answer), view));
  }

  /**
   * Hands on the bytes of the server's answer, unread.
   *
   * @return false when nothing listens there any more
   * @throws ServerRefusalException when the server refuses
   */
  boolean copy(ServerRequest request, Consumer<InputStream> target) {
    return asked(
            request,
            answer -> {
              target.accept(answer);
              return true;
            })
        .orElse(false);
  }

  private <V> Optional<V> asked(ServerRequest request, Function<InputStream, V> reading) {
    HttpURLConnection connection = null;
    try {
      connection = open(request);
      int status = connection.getResponseCode();
      if (status >= 400) {
        throw refusal(status, textOf(connection.getErrorStream()));
      }
      return Optional.of(reading.apply(connection.getInputStream()));
    } catch (ConnectException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(
          new IOException("the server at " + server.address() + " did not answer", e));
    } finally {
      if (connection != null) {
        connection.disconnect();
      }
    }
  }

  private HttpURLConnection open(ServerRequest request) throws IOException {
    URI address = URI.create(server.address() + request.target());
    HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
    connection.setRequestMethod(request.method());
    connection.setConnectTimeout(CONNECT_MILLIS);
    connection.setReadTimeout(ANSWER_MILLIS);
    connection.setRequestProperty("Accept", "application/json");
    connection.setRequestProperty(TOKEN_HEADER, server.token());
    if (!request.contentType().isEmpty()) {
      connection.setRequestProperty("Content-Type", request.contentType());
      connection.setDoOutput(true);
      try (OutputStream body = connection.getOutputStream()) {
        body.write(request.body().getBytes(StandardCharsets.UTF_8));
      }
    }
    return connection;
  }

  private static ServerRefusalException refusal(int status, String body) {
    Problem problem = body.startsWith("{") ? JSON.readValue(body, Problem.class) : null;
    if (problem == null || problem.exitCode() == null) {
      return new ServerRefusalException(
          ExitCode.NOT_DONE, "the running server answered with status " + status);
    }
    String sentence = problem.detail() == null ? problem.title() : problem.detail();
    return new ServerRefusalException(
        problem.exitCode(), sentence == null ? "refused without a reason" : sentence);
  }

  private static String textOf(@Nullable InputStream stream) {
    if (stream == null) {
      return "";
    }
    try (stream) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(new IOException("the server's answer broke off", e));
    }
  }
}
