package org.wetside.app.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * Where the server of a home listens, so that other commands on that home can go through it. Kept
 * in the file {@code server} of the home, readable by its owner only: whoever holds the token may
 * do what the owner may do.
 *
 * @param address loopback address without a slash at the end, for example {@code
 *     http://127.0.0.1:8420}
 * @param token secret sent with every request in the header {@value #TOKEN_HEADER}
 * @param processId the process that serves
 */
public record ServerAddress(String address, String token, long processId) {
  /** The header that carries the token. */
  public static final String TOKEN_HEADER = "Wetside-Token";

  private static final String FILE = "server";

  /** Writes the file whole or not at all, mode 600 where the file system knows modes. */
  public void writeTo(Path home) {
    Path file = home.resolve(FILE);
    Path fresh = home.resolve(FILE + ".new");
    try {
      Files.deleteIfExists(fresh);
      Files.createFile(fresh);
      if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
        Files.setPosixFilePermissions(
            fresh, EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE));
      }
      Files.write(fresh, List.of(address, token, Long.toString(processId)));
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the file says; empty when there is none or it is not whole. */
  public static Optional<ServerAddress> readFrom(Path home) {
    try {
      List<String> lines = Files.readAllLines(home.resolve(FILE));
      return lines.size() < 3
          ? Optional.empty()
          : Optional.of(
              new ServerAddress(lines.get(0), lines.get(1), Long.parseLong(lines.get(2))));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes the file away when the server stops. */
  public static void removeFrom(Path home) {
    try {
      Files.deleteIfExists(home.resolve(FILE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
