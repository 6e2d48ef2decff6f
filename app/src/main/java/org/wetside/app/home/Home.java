package org.wetside.app.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * The folder that holds one person's data: {@code wetside.db}, the lock, and while a server runs
 * the file that says how to reach it.
 *
 * @param folder where it is; need not exist yet
 */
public record Home(Path folder) {
  private static final String DEMO_MARK = "demo";

  /**
   * The home meant when none is named: {@code WETSIDE_HOME}, else the visible folder {@code
   * Wetside} in the user's home, where it is found, copied and backed up like any other.
   *
   * @param environment the variables of the process
   * @param userHome the user's home folder
   */
  public static Home usual(Map<String, String> environment, Path userHome) {
    String named = environment.getOrDefault("WETSIDE_HOME", "");
    return new Home(named.isBlank() ? userHome.resolve("Wetside") : Path.of(named));
  }

  /** The database. */
  public Path database() {
    return folder.resolve("wetside.db");
  }

  /** Locked by the process that may write. */
  public Path lock() {
    return folder.resolve("wetside.lock");
  }

  /** How to reach the running server; see {@link ServerAddress}. */
  public Path server() {
    return folder.resolve("server");
  }

  /** Key and certificate of the authority that phones are told to trust; there when it was made. */
  public Path authority() {
    return folder.resolve("authority.p12");
  }

  /** Copies of the database that the program made. */
  public Path backups() {
    return folder.resolve("backups");
  }

  /** Pictures that are measured, each a TIFF file of its own. */
  public Path pictures() {
    return folder.resolve("pictures");
  }

  /** Whether everything in here is invented. */
  public boolean isDemo() {
    return Files.exists(folder.resolve(DEMO_MARK));
  }

  /** Makes the folder when there is none. */
  public void make() {
    try {
      Files.createDirectories(folder);
    } catch (IOException failure) {
      throw new UncheckedIOException(
          "the data folder " + folder + " cannot be made: " + failure, failure);
    }
  }

  /** Says in the folder itself that its content is invented. */
  public void markAsDemo() {
    make();
    try {
      Files.writeString(
          folder.resolve(DEMO_MARK), "Everything in this folder is invented by the demo.\n");
    } catch (IOException failure) {
      throw new UncheckedIOException("marking " + folder + " as demo: " + failure, failure);
    }
  }
}
