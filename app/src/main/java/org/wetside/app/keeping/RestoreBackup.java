package org.wetside.app.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.Optional;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.app.home.HomeLock;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.DatabaseFile;
import org.wetside.store.Landing;
import org.wetside.store.StoreException;

/**
 * Puts a backup in the place of the data of a home. What was there is kept aside first. Up to the
 * last step the old data are in place, and that step is one renaming.
 */
public final class RestoreBackup {
  private final Home home;
  private final Clock clock;
  private final KeptBackups kept;

  /**
   * @param home where it is put
   * @param clock names what is kept aside
   */
  public RestoreBackup(Home home, Clock clock) {
    this.home = home;
    this.clock = clock;
    kept = new KeptBackups(home);
  }

  /**
   * Puts a file back.
   *
   * @param force whether data that are there may be replaced (they are kept aside all the same)
   * @throws BadValueException when there are data already, or the file is those data themselves
   * @throws org.wetside.app.home.HomeInUseException when a server or another command writes there
   * @throws CannotDoException when the file is not there, damaged, not of this program, or newer
   */
  public Restored from(Path file, boolean force) {
    refuseItself(file);
    HomeLock lock = HomeLock.take(home, clock.instant());
    try {
      boolean data = Files.exists(home.database());
      if (data && !force) {
        throw new BadValueException(
            "restore",
            home.folder().toString(),
            "there are data in this folder; --force keeps them aside and puts the backup in their"
                + " place");
      }
      return put(file, data);
    } catch (StoreException refused) {
      throw new CannotDoException(
          refused.getMessage() + ". The data in " + home.folder() + " were not changed.", refused);
    } catch (IOException failure) {
      throw new UncheckedIOException("restoring into " + home.folder() + ": " + failure, failure);
    } finally {
      lock.close();
    }
  }

  private Restored put(Path file, boolean data) throws IOException {
    DatabaseFile backup = new DatabaseFile(file);
    int version = backup.version();
    Path fresh = home.folder().resolve("wetside.db.restored");
    try {
      Leftovers.remove(fresh);
      backup.copyTo(fresh, true);
      DatabaseFile copy = new DatabaseFile(fresh);
      copy.bringUpToDate();
      copy.settle();
      Optional<Path> aside = data ? Optional.of(setAside()) : Optional.empty();
      takeLogAway();
      new Landing(home.database()).take(fresh);
      Findings findings = CheckData.of(home.database()).of(file, version);
      return new Restored(home.folder(), version, aside, findings);
    } finally {
      Leftovers.remove(fresh);
    }
  }

  /**
   * Copies what is there, byte by byte, because it may be damaged: that may be why a backup is put
   * back. What its log holds is written into it first, where that can still be done.
   */
  private Path setAside() throws IOException {
    kept.makeFolder();
    Path aside = kept.named(KeptBackup.Kind.BEFORE_RESTORE, clock.instant());
    try {
      new DatabaseFile(home.database()).settle();
    } catch (StoreException damaged) {
      Path log = Leftovers.log(home.database());
      if (Files.exists(log)) {
        copy(log, Leftovers.log(aside));
      }
    }
    copy(home.database(), aside);
    return aside;
  }

  private static void copy(Path from, Path to) {
    new Landing(to)
        .write(
            beside -> {
              try {
                Files.copy(from, beside, StandardCopyOption.REPLACE_EXISTING);
              } catch (IOException failure) {
                throw new UncheckedIOException("copying " + from + ": " + failure, failure);
              }
            },
            false);
  }

  /** A log beside another database would be written into that one. */
  private void takeLogAway() throws IOException {
    Files.deleteIfExists(Leftovers.log(home.database()));
    Files.deleteIfExists(Leftovers.shared(home.database()));
  }

  private void refuseItself(Path file) {
    try {
      if (Files.exists(file)
          && Files.exists(home.database())
          && Files.isSameFile(file, home.database())) {
        throw new BadValueException(
            "backup", file.toString(), "another file than the data themselves");
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException("reading " + file + ": " + unreadable, unreadable);
    }
  }
}
