package org.wetside.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What else may stand on a bottle, beside what it is and how much it holds. */
final class LabelOptions {
  @Option(
      names = "--dilution",
      paramLabel = "DILUTION",
      description = "how it was made, or, with a clip test, is: 1+4")
  @Nullable String dilution;

  @Option(names = "--use", paramLabel = "USE", description = "one-shot, reused or replenished")
  @Nullable String use;

  @Option(
      names = "--storage",
      paramLabel = "HOW",
      description = "full, stoppered; half full; tank with floating lid; open tray")
  @Nullable String storage;

  @Option(names = "--batch", paramLabel = "BATCH", description = "which batch it comes from")
  @Nullable String batch;

  @Option(names = "--owner", paramLabel = "NAME", description = "whose it is")
  @Nullable String owner;
}
