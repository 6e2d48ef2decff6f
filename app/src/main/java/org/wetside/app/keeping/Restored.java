package org.wetside.app.keeping;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A backup that was put back.
 *
 * @param home the folder it is in now
 * @param version of its tables as the file had them
 * @param aside where what was there before is kept; empty when there was nothing
 * @param findings what the check says of the data that are there now
 */
public record Restored(Path home, int version, Optional<Path> aside, Findings findings) {}
