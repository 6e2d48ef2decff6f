package org.wetside.app.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.DatabaseFile;
import org.wetside.store.Landing;
import org.wetside.store.StoreException;

/**
 * Copies all data of a home, as of one moment, into one file; whoever writes in the home goes on
 * meanwhile, and an event that was answered before is in it.
 */
public final class MakeBackup {
  private final Home home;
  private final Clock clock;
  private final KeptBackups kept;

  /**
   * @param home whose data
   * @param clock names the files that are kept in the home
   */
  public MakeBackup(Home home, Clock clock) {
    this.home = home;
    this.clock = clock;
    kept = new KeptBackups(home);
  }

  /**
   * Writes it to a file of the user's choice.
   *
   * @param force whether a file that is there may be replaced
   * @return its size in bytes
   * @throws BadValueException when there is such a file, or a folder of that name
   * @throws CannotDoException when it cannot be written or read; what was there is still there
   */
  public long to(Path file, boolean force) {
    if (Files.isDirectory(file)) {
      throw new BadValueException("backup", file.toString(), "a file, not a folder");
    }
    if (Files.exists(file) && !force) {
      throw new BadValueException(
          "backup", file.toString(), "there is such a file; --force replaces it");
    }
    if (isData(file)) {
      throw new BadValueException(
          "backup", file.toString(), "another file than the data themselves");
    }
    return copied(file, force);
  }

  /** Writes one into the folder of the home, under the present moment. */
  public KeptBackup byHand() {
    return keep(KeptBackup.Kind.BY_HAND);
  }

  /** Keeps what is there before a newer program changes the tables. */
  public KeptBackup beforeUpdate() {
    return keep(KeptBackup.Kind.BEFORE_UPDATE);
  }

  private KeptBackup keep(KeptBackup.Kind kind) {
    mustHaveData();
    kept.makeFolder();
    Path file = kept.named(kind, clock.instant());
    copied(file, false);
    return kept.find(String.valueOf(file.getFileName())).orElseThrow();
  }

  /**
   * Makes today's, or makes it anew, when something has changed since the newest daily one; then
   * lets those go that the rotation has no place for.
   *
   * @return the one made; empty when nothing has changed, or there are no data yet
   */
  public Optional<KeptBackup> ofToday() {
    if (!Files.exists(home.database())) {
      return Optional.empty();
    }
    kept.makeFolder();
    Path candidate = kept.folder().resolve("daily.new");
    copied(candidate, true);
    try {
      List<LocalDate> before = kept.days();
      if (!before.isEmpty() && isSame(candidate, kept.ofDay(before.get(0)))) {
        return Optional.empty();
      }
      Path today = kept.ofDay(LocalDate.ofInstant(clock.instant(), clock.getZone()));
      new Landing(today).take(candidate);
      Rotation.over(kept.days()).forEach(day -> delete(kept.ofDay(day)));
      return kept.find(String.valueOf(today.getFileName()));
    } catch (StoreException refused) {
      throw new CannotDoException(String.valueOf(refused.getMessage()), refused);
    } finally {
      delete(candidate);
    }
  }

  /** When the data were last written to; the beginning of time when there are none. */
  FileTime lastWritten() {
    FileTime last = FileTime.fromMillis(0);
    for (Path one : new Path[] {home.database(), Leftovers.log(home.database())}) {
      try {
        FileTime at = Files.getLastModifiedTime(one);
        last = at.compareTo(last) > 0 ? at : last;
      } catch (IOException notThere) {
        // what is not there was not written to
      }
    }
    return last;
  }

  private void mustHaveData() {
    if (!Files.exists(home.database())) {
      throw new CannotDoException(
          "there is nothing to back up: the data folder " + home.folder() + " has no data yet");
    }
  }

  private long copied(Path file, boolean force) {
    mustHaveData();
    try {
      new DatabaseFile(home.database()).copyTo(file, force);
      return Files.size(file);
    } catch (StoreException refused) {
      throw new CannotDoException(String.valueOf(refused.getMessage()), refused);
    } catch (IOException gone) {
      throw new UncheckedIOException("reading " + file + ": " + gone, gone);
    }
  }

  private boolean isData(Path file) {
    return file.toAbsolutePath().normalize().equals(home.database().toAbsolutePath().normalize());
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.mismatch(one, other) < 0;
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(file + " cannot be taken away: " + failure, failure);
    }
  }
}
