package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MainTest {
  @Test
  void printsTheSameAnswerAsTextAndAsJson() {
    Typed text = Typed.of("version");
    Typed json = Typed.of("version", "--json");

    assertThat(text.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(text.out()).contains("Java " + System.getProperty("java.version"));
    assertThat(json.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(json.out()).contains("\"java\" : \"" + System.getProperty("java.version") + "\"");
  }

  @Test
  void saysWhatIsWrongWithUnknownCommandsAndOptions() {
    Typed command = Typed.of("develop");
    Typed option = Typed.of("version", "--loud");

    assertThat(command.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(command.err()).contains("develop").contains("wetside --help");
    assertThat(option.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(option.err()).contains("--loud").contains("wetside version --help");
  }

  @Test
  void listsEveryCommandWhenNothingIsTyped() {
    Typed nothing = Typed.of();

    assertThat(nothing.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(nothing.out()).contains(Commands.NAMES);
  }

  @Test
  void takesTheHomeBeforeAndAfterTheCommand() {
    assertThat(Typed.of("--home", "somewhere", "version").exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(Typed.of("version", "--home", "somewhere").exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void helpIsAnAnswer() {
    Typed all = Typed.of("--help");
    Typed one = Typed.of("version", "--help");

    assertThat(all.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(all.out()).contains(Commands.NAMES);
    assertThat(one.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(one.out()).contains("--json", "--home");
  }
}
