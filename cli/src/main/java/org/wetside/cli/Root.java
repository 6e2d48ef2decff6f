package org.wetside.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.home.Home;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command before the commands: options that every command shares. */
@Command(
    name = "wetside",
    scope = ScopeType.INHERIT,
    synopsisSubcommandLabel = "COMMAND",
    header = "Plans an evening of film developing, leads the run, keeps the record.")
final class Root {
  @Option(
      names = "--home",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description =
          "the folder with your data (default: $$WETSIDE_HOME, else Wetside in your home folder)")
  @Nullable Path home;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "show this help and end")
  boolean help;

  /** The data to work on: the option, the environment, or the user's own folder. */
  Home home() {
    Home chosen =
        home == null
            ? Home.usual(System.getenv(), Path.of(System.getProperty("user.home", ".")))
            : new Home(home);
    return new Home(chosen.folder().toAbsolutePath().normalize());
  }
}
