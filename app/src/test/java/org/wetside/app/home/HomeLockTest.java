package org.wetside.app.home;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HomeLockTest {
  private static final Instant NOW = Instant.parse("2026-01-15T20:00:00Z");

  @TempDir Path folder;

  @Test
  void theSecondIsToldWhoHoldsTheHome() {
    Home home = new Home(folder.resolve("new"));
    try (HomeLock first = HomeLock.take(home, NOW)) {
      first.servingAt("http://127.0.0.1:7373");
      assertThatThrownBy(() -> HomeLock.take(home, NOW))
          .isInstanceOf(HomeInUseException.class)
          .hasMessageContaining("process " + ProcessHandle.current().pid())
          .hasMessageContaining("since " + NOW)
          .hasMessageContaining("serving at http://127.0.0.1:7373");
    }
    HomeLock.take(home, NOW).close();
  }

  @Test
  void aFileLeftByAKilledProcessHoldsNothing() throws Exception {
    Home home = new Home(folder);
    Files.writeString(home.lock(), "pid 4711\nsince 2026-01-14T20:00:00Z\n");
    HomeLock.take(home, NOW).close();
  }
}
