package org.wetside.app.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;

/**
 * How another command on this machine reaches the server of a home. Kept in {@link Home#server()},
 * readable by its owner alone (mode 600).
 *
 * @param address for example {@code http://127.0.0.1:7373}
 * @param token what a request must carry to act for the owner
 */
public record ServerAddress(String address, String token) {
  /** Writes the file, never readable by others, not even for a moment. */
  public void write(Home home) {
    PrivateFile.write(
        home.server(), (address + "\n" + token + "\n").getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads the file; empty when there is none. It may be left over from a server that was killed:
   * then nothing answers at the address, and the lock of the home is free.
   */
  public static Optional<ServerAddress> read(Home home) {
    try {
      List<String> lines = Files.readAllLines(home.server());
      return lines.size() < 2
          ? Optional.empty()
          : Optional.of(new ServerAddress(lines.get(0), lines.get(1)));
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /** Removes the file, when the server stops. */
  public static void remove(Home home) {
    try {
      Files.deleteIfExists(home.server());
    } catch (IOException failure) {
      throw new UncheckedIOException("removing " + home.server() + ": " + failure, failure);
    }
  }
}
