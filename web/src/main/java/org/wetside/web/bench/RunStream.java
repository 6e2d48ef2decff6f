package org.wetside.web.bench;

import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.wetside.web.api.Json;

/**
 * The lines to the screens: a snapshot on connecting and after each event, a heartbeat every 15 s.
 * Sent from a thread of its own, so that a slow screen never holds up the run.
 */
final class RunStream {
  private static final int HEARTBEAT_SECONDS = 15;
  private static final int LAST_WORDS_SECONDS = 2;

  private static final Logger LOG = LoggerFactory.getLogger(RunStream.class);

  private final LongFunction<SnapshotView> look;
  private final Supplier<String> now;
  private final Map<Long, Set<SseClient>> screens = new ConcurrentHashMap<>();
  private final ScheduledExecutorService sender =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "screens");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * @param look the run as it stands
   * @param now the server's moment as text
   */
  RunStream(LongFunction<SnapshotView> look, Supplier<String> now) {
    this.look = look;
    this.now = now;
    ScheduledFuture<?> unused =
        sender.scheduleAtFixedRate(
            this::beat, HEARTBEAT_SECONDS, HEARTBEAT_SECONDS, TimeUnit.SECONDS);
  }

  /** A screen that has just connected. */
  void add(long run, SseClient screen) {
    screen.keepAlive();
    screens.computeIfAbsent(run, unused -> ConcurrentHashMap.newKeySet()).add(screen);
    screen.onClose(() -> screens.getOrDefault(run, Set.of()).remove(screen));
    send(screen, look.apply(run));
  }

  /**
   * Sends nothing any more and ends every line. Must come before the server stops: a line that is
   * written to after that fails again in the answering of its failure, without end.
   */
  void close() {
    sender.shutdownNow();
    try {
      if (!sender.awaitTermination(LAST_WORDS_SECONDS, TimeUnit.SECONDS)) {
        LOG.warn("a line to a screen did not end within {} s", LAST_WORDS_SECONDS);
      }
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
    }
    screens.values().forEach(all -> all.forEach(SseClient::close));
    screens.clear();
  }

  /** A run has changed; called by the conductor, which does not wait. */
  void changed(long run) {
    if (!sender.isShutdown() && !screens.getOrDefault(run, Set.of()).isEmpty()) {
      sender.execute(() -> tellAll(run));
    }
  }

  private void tellAll(long run) {
    SnapshotView view = look.apply(run);
    for (SseClient screen : screens.getOrDefault(run, Set.of())) {
      send(screen, view);
    }
  }

  private void beat() {
    String data = "{\"now\":\"" + now.get() + "\"}";
    for (Set<SseClient> all : screens.values()) {
      for (SseClient screen : all) {
        deliver(screen, "heartbeat", data, null);
      }
    }
  }

  private void send(SseClient screen, SnapshotView view) {
    deliver(screen, "snapshot", Json.write(view), Long.toString(view.sequence()));
  }

  /** A screen that has gone takes nothing any more; the others must not notice. */
  private void deliver(SseClient screen, String event, String data, @Nullable String id) {
    if (screen.terminated()) {
      forget(screen);
      return;
    }
    try {
      screen.sendEvent(event, data, id);
    } catch (RuntimeException gone) {
      forget(screen);
    }
  }

  private void forget(SseClient screen) {
    screens.values().forEach(all -> all.remove(screen));
  }
}
