package org.wetside.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/**
 * Brings a file to its place whole or not at all: it is written beside under a name of its own,
 * synced, and then named. What was there before is there until then.
 */
public final class Landing {
  private static final long MEGABYTE = 1_000_000;

  private final Path target;

  /**
   * @param target where the file is to be
   */
  public Landing(Path target) {
    this.target = target.toAbsolutePath();
  }

  /**
   * Refuses before anything is written when the disk has no room.
   *
   * @throws StoreException when there is less, or the folder is not there
   */
  public void checkRoom(long bytes) {
    try {
      checkRoom(bytes, Files.getFileStore(folder()).getUsableSpace());
    } catch (IOException failure) {
      throw cannot(failure);
    }
  }

  /** The rule alone: needed against free, both in bytes. */
  void checkRoom(long bytes, long free) {
    if (free < bytes) {
      throw new StoreException(
          "writing "
              + target
              + ": the disk has "
              + megabytes(free)
              + " free, "
              + megabytes(bytes)
              + " are needed. Nothing was written.");
    }
  }

  private static String megabytes(long bytes) {
    return String.format(java.util.Locale.ROOT, "%.1f MB", (double) bytes / MEGABYTE);
  }

  /**
   * Writes it.
   *
   * @param writing is given the name to write under
   * @param replace whether a file that is there may be replaced
   * @throws StoreException when the disk or the system does not allow it
   */
  public void write(Consumer<Path> writing, boolean replace) {
    Path beside = target.resolveSibling(target.getFileName() + ".part");
    try {
      Files.deleteIfExists(beside);
      try {
        writing.accept(beside);
        sync(beside, StandardOpenOption.WRITE);
        name(beside, replace);
        syncFolder();
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException failure) {
      throw cannot(failure);
    }
  }

  /**
   * Takes a whole file of the same folder in place of what is there, synced.
   *
   * @throws StoreException when the disk or the system does not allow it
   */
  public void take(Path whole) {
    try {
      sync(whole, StandardOpenOption.WRITE);
      name(whole, true);
      syncFolder();
    } catch (IOException failure) {
      throw cannot(failure);
    }
  }

  private void name(Path beside, boolean replace) throws IOException {
    if (replace) {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } else {
      Files.move(beside, target);
    }
  }

  /** So that the name is on disk too; systems that have no such thing keep it themselves. */
  private void syncFolder() {
    try {
      sync(folder(), StandardOpenOption.READ);
    } catch (IOException notAsked) {
      // Windows refuses to open a folder; its file systems write names in order.
      return;
    }
  }

  private static void sync(Path path, StandardOpenOption way) throws IOException {
    try (FileChannel channel = FileChannel.open(path, way)) {
      channel.force(true);
    }
  }

  private Path folder() {
    Path folder = target.getParent();
    return folder == null ? target : folder;
  }

  private StoreException cannot(IOException failure) {
    String reason =
        failure instanceof FileAlreadyExistsException
            ? "there is such a file already"
            : Files.isDirectory(folder())
                ? "the system does not allow it (" + failure + ")"
                : "there is no folder " + folder();
    return StoreException.saying("writing " + target + ": " + reason, failure);
  }
}
