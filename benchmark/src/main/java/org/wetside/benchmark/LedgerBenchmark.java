package org.wetside.benchmark;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
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
import org.wetside.core.bath.BathKind;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.MarkedRoll;
import org.wetside.core.shelf.RollMarks;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** A bottle with a hundred thousand lines in its ledger. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LedgerBenchmark {
  /** Names the folder of a home with the long ledger. */
  public static final String HOME = "wetside.benchmark.ledger";

  private final List<LedgerLine> lines = LongLedger.lines(LongLedger.LINES);
  private final Wetside wetside;
  private final WebServer server;
  private final HttpClient client = HttpClient.newHttpClient();

  /** Serves the home. */
  public LedgerBenchmark() {
    Path home = Path.of(System.getProperty(HOME, ""));
    wetside =
        Wetside.open(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    server = WebServer.start(wetside, WebOptions.onPort(0));
  }

  /** Closes it; nothing was changed in it. */
  @TearDown
  public void close() {
    server.close();
    wetside.close();
  }

  /** The state, folded from lines in memory. */
  @Benchmark
  public BottleState fold() {
    return BottleState.of(BathKind.FIXER, lines);
  }

  /** Which rolls are vouched for, folded from lines in memory. */
  @Benchmark
  public List<MarkedRoll> foldRolls() {
    return RollMarks.of(BathKind.FIXER, lines);
  }

  /** The page of the bottle, asked for over HTTP. */
  @Benchmark
  public String page() throws IOException, InterruptedException {
    return http("/shelf/" + LongLedger.LETTER);
  }

  /** The page in the middle of its ledger. */
  @Benchmark
  public String pageInTheMiddle() throws IOException, InterruptedException {
    return http("/shelf/" + LongLedger.LETTER + "?before=" + LongLedger.LINES / 2);
  }

  /** The whole Shelf. */
  @Benchmark
  public String shelf() throws IOException, InterruptedException {
    return http("/shelf");
  }

  private String http(String path) throws IOException, InterruptedException {
    URI address = server.address().resolve(path);
    HttpResponse<String> answer =
        client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(address + " answered " + answer.statusCode());
    }
    return answer.body();
  }
}
