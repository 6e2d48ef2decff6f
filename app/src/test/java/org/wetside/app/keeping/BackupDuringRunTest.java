package org.wetside.app.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.home.Home;
import org.wetside.core.run.RunEvent;
import org.wetside.store.Database;
import org.wetside.store.Runs;

/** A backup taken while runs go on is a state that was, whole, whenever it is taken. */
class BackupDuringRunTest {
  private static final long SEED = 20260114;
  private static final int TIMES = 50;
  private static final int LONGEST_WAIT_MS = 25;

  @TempDir Path folder;

  @Test
  void fiftyBackupsAtRandomMomentsRestoreToACleanState() throws InterruptedException {
    SplittableRandom random = new SplittableRandom(SEED);
    int movedMeanwhile = 0;
    long mostEvents = 0;
    int mostRuns = 0;
    try (BusyEvening evening = new BusyEvening(folder.resolve("home"))) {
      evening.begin(SEED);
      for (int i = 0; i < TIMES; i++) {
        Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
        Path file = folder.resolve("backup-" + i + ".db");
        Set<String> before = new HashSet<>(evening.answered);
        evening.wetside.makeBackup().to(file, false);
        Set<String> after = new HashSet<>(evening.sent);
        movedMeanwhile += evening.answered.size() > before.size() ? 1 : 0;

        Home other = new Home(folder.resolve("other-" + i));
        Restored restored = new RestoreBackup(other, evening.clock).from(file, false);
        assertThat(restored.findings().faults()).as("after backup %s", i).isEmpty();
        assertThat(restored.aside()).isEmpty();
        Set<String> kept = eventsOf(other);
        assertThat(kept).as("answered before backup %s", i).containsAll(before);
        assertThat(after).as("sent by the end of backup %s", i).containsAll(kept);
        mostEvents = Math.max(mostEvents, restored.findings().events());
        mostRuns = Math.max(mostRuns, restored.findings().runs());
      }
      evening.end();
    }
    assertThat(movedMeanwhile).as("backups during which an event was stored").isGreaterThan(15);
    assertThat(mostRuns).as("runs that were lived through").isGreaterThan(3);
    assertThat(mostEvents).isGreaterThan(200);
  }

  /** Ids of what screens sent; those the conductor made itself are left out. */
  private static Set<String> eventsOf(Home home) {
    Set<String> ids = new HashSet<>();
    try (Database database = Database.openToRead(home.database()).orElseThrow()) {
      List<RunEvent> events =
          database.<List<RunEvent>>read(
              session ->
                  new Runs(session)
                      .all().stream()
                          .flatMap(run -> new Runs(session).events(run).stream())
                          .toList());
      events.stream()
          .filter(event -> event.screen().equals("test"))
          .forEach(event -> ids.add(event.id()));
    }
    return ids;
  }
}
