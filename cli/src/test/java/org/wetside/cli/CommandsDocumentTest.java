package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** docs/commands.md names every command and option there is, and none that is not. */
class CommandsDocumentTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");
  private static final Pattern COMMAND = Pattern.compile("(?m)^ {4}wetside ([a-z]+)");

  private final String document = read();

  private static String read() {
    try {
      return Files.readString(Path.of("..", "docs", "commands.md"));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  private static Set<String> found(Pattern pattern, String text, int group) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(group));
    }
    return found;
  }

  @Test
  void everyCommandStandsThereAndNoOther() {
    Set<String> written = found(COMMAND, document, 1);
    written.add("completion");
    assertThat(document).contains("<(wetside completion)");
    assertThat(written).containsExactlyInAnyOrderElementsOf(Commands.NAMES);
  }

  @Test
  void everyOptionStandsThereAndNoOther() {
    Set<String> real = new TreeSet<>();
    for (CommandLine command : Main.whole().getSubcommands().values()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        for (String name : option.names()) {
          if (name.startsWith("--")) {
            real.add(name);
          }
        }
      }
    }
    real.add("--home");
    assertThat(found(OPTION, document, 0)).containsExactlyInAnyOrderElementsOf(real);
  }
}
