package org.wetside.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Command;

/** {@code wetside version}: what runs here. The smallest command, to copy from. */
@Command(name = "version", description = "Say which Wetside this is and what it runs on.")
final class VersionCommand extends ViewCommand<VersionCommand.VersionView> {
  /**
   * What runs here.
   *
   * @param version of Wetside
   * @param java of the Java runtime
   * @param system operating system and processor
   */
  record VersionView(String version, String java, String system) {}

  @Override
  VersionView answer() {
    String packaged = Main.class.getPackage().getImplementationVersion();
    return new VersionView(
        packaged == null ? "not packaged" : packaged,
        System.getProperty("java.version", "?"),
        System.getProperty("os.name", "?") + " " + System.getProperty("os.arch", "?"));
  }

  @Override
  void print(VersionView view, PrintWriter out) {
    out.println("Wetside " + view.version());
    out.println("Java " + view.java() + " on " + view.system());
  }
}
