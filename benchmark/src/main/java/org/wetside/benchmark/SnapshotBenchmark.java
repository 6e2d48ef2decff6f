package org.wetside.benchmark;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.wetside.app.Wetside;
import org.wetside.core.run.MishapAdvice;
import org.wetside.reference.Mishaps;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import org.wetside.web.api.Json;
import org.wetside.web.bench.SnapshotView;

/**
 * The Bench as a screen gets it, from a real database with many stored runs and one that goes on.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SnapshotBenchmark {
  /** Names the folder of a home that was lived. */
  public static final String HOME = "wetside.benchmark.home";

  private final StoredRuns runs;
  private final Wetside wetside;
  private final WebServer server;
  private final HttpClient client = HttpClient.newHttpClient();
  private final List<MishapAdvice> mishaps = Mishaps.all();

  /** Opens a copy of the home and serves it. */
  public SnapshotBenchmark() {
    runs = StoredRuns.copyOf(Path.of(System.getProperty(HOME, "")));
    wetside = runs.open();
    server = WebServer.start(wetside, WebOptions.onPort(0));
  }

  /** Closes and removes the copy. */
  @TearDown
  public void close() {
    server.close();
    wetside.close();
    runs.remove();
  }

  /** The run that goes on, to the JSON that is sent. */
  @Benchmark
  public String running() {
    return json(runs.running());
  }

  /** A run that is over: read from the database and folded every time. */
  @Benchmark
  public String finished() {
    return json(runs.over());
  }

  /** The run that goes on, asked for over HTTP. */
  @Benchmark
  public String runningOverHttp() throws IOException, InterruptedException {
    return http(runs.running());
  }

  /** The run that is over, asked for over HTTP. */
  @Benchmark
  public String finishedOverHttp() throws IOException, InterruptedException {
    return http(runs.over());
  }

  private String json(long run) {
    return Json.write(SnapshotView.of(wetside.bench().look(run), mishaps));
  }

  private String http(long run) throws IOException, InterruptedException {
    URI address = server.address().resolve("/api/runs/" + run);
    HttpResponse<String> answer =
        client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(address + " answered " + answer.statusCode());
    }
    return answer.body();
  }
}
