package org.wetside.web.keeping;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.keeping.Restored;

/**
 * A backup that was put back.
 *
 * @param file the backup
 * @param home the folder it was put into
 * @param version of its tables as the file had them
 * @param aside where what was there before is kept; null when there was nothing
 * @param check what the check says of the data that are there now
 */
public record RestoredView(
    String file, String home, int version, @Nullable String aside, FindingsView check) {
  /** Of a backup put back. */
  public static RestoredView of(Path file, Restored restored) {
    return new RestoredView(
        file.toString(),
        restored.home().toString(),
        restored.version(),
        restored.aside().map(Path::toString).orElse(null),
        FindingsView.of(restored.findings()));
  }
}
