package org.wetside.web.bench;

import io.javalin.http.sse.SseClient;
import java.util.List;
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
import org.wetside.web.pairing.StillIn;

/**
 * The lines to the screens: a snapshot on connecting and after each event, a heartbeat every 15 s.
 * Sent from a thread of its own, so that a slow screen never holds up the run.
 */
final class RunStream {
  /**
   * The screens that show a run now.
   *
   * @param screens by name
   */
  public record ScreensView(List<ScreenView> screens) {}

  /**
   * One screen.
   *
   * @param screen the name it gave itself
   * @param silent whether nothing can be heard there
   */
  public record ScreenView(String screen, boolean silent) {}

  /**
   * What a screen says of itself.
   *
   * @param screen its name
   * @param silent whether nothing can be heard there
   * @param leadingSince since when it has led the run without a break, with or without the server;
   *     null when it does not say
   */
  public record ScreenBody(
      @Nullable String screen, @Nullable Boolean silent, @Nullable String leadingSince) {}

  private static final int HEARTBEAT_SECONDS = 15;
  private static final int LAST_WORDS_SECONDS = 2;

  private static final Logger LOG = LoggerFactory.getLogger(RunStream.class);

  private final LongFunction<SnapshotView> look;
  private final Supplier<String> now;
  private final Map<Long, Set<SseClient>> screens = new ConcurrentHashMap<>();
  private final Map<Long, Map<String, Boolean>> silence = new ConcurrentHashMap<>();
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
    screen.onClose(() -> forget(run, screen));
    send(screen, look.apply(run));
    tellPresent(run);
  }

  /** Whether a screen can be heard has changed: the others say so. */
  ScreensView heard(long run, String screen, boolean silent) {
    silence.computeIfAbsent(run, unused -> new ConcurrentHashMap<>()).put(screen, silent);
    tellPresent(run);
    return present(run);
  }

  /** The named screens that show a run, each once. */
  private ScreensView present(long run) {
    Map<String, Boolean> known = silence.getOrDefault(run, Map.of());
    return new ScreensView(
        screens.getOrDefault(run, Set.of()).stream()
            .map(RunStream::nameOf)
            .filter(name -> !name.isEmpty())
            .distinct()
            .sorted()
            .map(name -> new ScreenView(name, known.getOrDefault(name, true)))
            .toList());
  }

  private void tellPresent(long run) {
    if (sender.isShutdown()) {
      return;
    }
    sender.execute(
        () -> {
          ScreensView present = present(run);
          if (present.screens().isEmpty()) {
            return; // whoever gave no name does not ask who else is there
          }
          String data = Json.write(present);
          screens.getOrDefault(run, Set.of()).forEach(one -> deliver(one, "screens", data, null));
        });
  }

  private void forget(long run, SseClient screen) {
    Set<SseClient> left = screens.getOrDefault(run, Set.of());
    left.remove(screen);
    String name = nameOf(screen);
    if (left.stream().noneMatch(other -> nameOf(other).equals(name))) {
      silence.getOrDefault(run, new ConcurrentHashMap<>()).remove(name);
    }
    tellPresent(run);
  }

  private static String nameOf(SseClient screen) {
    String name = screen.ctx().queryParam("screen");
    return name == null ? "" : name;
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
    if (!StillIn.check(screen.ctx())) {
      screen.close();
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
