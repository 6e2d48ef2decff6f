package org.wetside.app.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.DatabaseFile;
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
    kept.makeFolder();
    Path file = kept.named(KeptBackup.Kind.BY_HAND, clock.instant());
    copied(file, false);
    return kept.find(String.valueOf(file.getFileName())).orElseThrow();
  }

  /**
   * Makes today's, when there is none and something has changed since the last, and lets those go
   * that the rotation has no place for.
   *
   * @return the one made; empty when none was needed
   */
  public Optional<KeptBackup> ofToday() {
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    if (!Files.exists(home.database()) || kept.days().contains(today)) {
      return Optional.empty();
    }
    kept.makeFolder();
    List<LocalDate> before = kept.days();
    Path file = kept.ofDay(today);
    copied(file, false);
    if (!before.isEmpty() && isSame(file, kept.ofDay(before.get(0)))) {
      delete(file);
      return Optional.empty();
    }
    Rotation.over(kept.days()).forEach(day -> delete(kept.ofDay(day)));
    return kept.find(String.valueOf(file.getFileName()));
  }

  private long copied(Path file, boolean force) {
    if (!Files.exists(home.database())) {
      throw new CannotDoException(
          "there is nothing to back up: the data folder " + home.folder() + " has no data yet");
    }
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
      throw new UncheckedIOException(
          "the old backup " + file + " cannot be deleted: " + failure, failure);
    }
  }
}
