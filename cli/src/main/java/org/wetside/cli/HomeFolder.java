package org.wetside.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where the data live when nobody says otherwise. */
final class HomeFolder {
  private HomeFolder() {}

  /** {@code WETSIDE_HOME} when set, else the place where the operating system keeps such data. */
  static Path fromEnvironment(Map<String, String> environment) {
    String named = environment.get("WETSIDE_HOME");
    if (isSet(named)) {
      return Path.of(named);
    }
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    Path user = Path.of(System.getProperty("user.home", "."));
    if (system.startsWith("mac")) {
      return user.resolve("Library/Application Support/Wetside");
    }
    if (system.startsWith("windows")) {
      String roaming = environment.get("APPDATA");
      return (isSet(roaming) ? Path.of(roaming) : user).resolve("Wetside");
    }
    String shared = environment.get("XDG_DATA_HOME");
    return (isSet(shared) ? Path.of(shared) : user.resolve(".local/share")).resolve("wetside");
  }

  private static boolean isSet(@Nullable String value) {
    return value != null && !value.isBlank();
  }
}
