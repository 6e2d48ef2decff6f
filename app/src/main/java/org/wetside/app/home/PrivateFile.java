package org.wetside.app.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;

/** A file that its owner alone may read (mode 600), never readable by others for a moment. */
public final class PrivateFile {
  private PrivateFile() {}

  /** Writes the whole of it, or leaves what was there. */
  public static void write(Path file, byte[] content) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      Path fresh = Files.createTempFile(folder, file.getFileName().toString(), ".new");
      if (fresh.getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.setPosixFilePermissions(fresh, PosixFilePermissions.fromString("rw-------"));
      }
      Files.write(fresh, content);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failure) {
      throw new UncheckedIOException("writing " + file + ": " + failure, failure);
    }
  }
}
