package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** {@code wetside measures}, and formulas weighed out with them. */
class MeasuresCommandTest {
  private @TempDir Path home;
  private @TempDir Path other;

  private Typed type(Path where, String... words) {
    List<String> all = new ArrayList<>(List.of("--home", where.toString()));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  private List<String> said(Path where) {
    List<String> said = new ArrayList<>();
    said.add(type(where, "formula", "D-76", "--make", "700mL", "--json").out());
    said.add(type(where, "measures", "--balance", "0.01g").out());
    said.add(type(where, "measures", "red syringe", "--holds", "1L", "--division", "5mL").out());
    said.add(type(where, "formula", "D-76", "--make", "700mL", "--json").out());
    said.add(
        type(where, "formula", "D-76", "--make", "700mL", "--balance", "0.1g", "--json").out());
    said.add(type(where, "measures", "--balance", "0g").err());
    said.add(type(where, "measures", "odd", "--holds", "10mL", "--division", "0mL").err());
    said.add(type(where, "measures", "odd", "--holds", "10mL").err());
    said.add(type(where, "measures", "red syringe", "--remove").out());
    said.add(type(where, "measures", "--json").out());
    return said;
  }

  @Test
  void whatIsWrittenDownIsTakenByFormulasHereAndThroughTheServer() {
    check(said(home));
    try (Wetside wetside = Wetside.open(other, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(other));
      check(said(other));
    } finally {
      ServerAddress.remove(new Home(other));
    }
  }

  private static void check(List<String> said) {
    assertThat(said.get(0)).contains("\"balanceStepGrams\" : 0.1,");
    assertThat(said.get(1)).contains("shows 0.01 g");
    assertThat(said.get(2)).contains("red syringe  holds 1000 mL, division 5 mL");
    assertThat(said.get(3)).contains("\"balanceStepGrams\" : 0.01,", "red syringe");
    assertThat(said.get(4)).contains("\"balanceStepGrams\" : 0.1,");
    assertThat(said.get(5)).contains("balance step", "0 g", "it must be more than 0 g");
    assertThat(said.get(6)).contains("division of the measure", "it must be more than 0 mL");
    assertThat(said.get(7)).contains("half of it");
    assertThat(said.get(8)).contains("those usual at home are taken");
    assertThat(said.get(9)).contains("\"balanceStepGrams\" : 0.01", "\"measures\" : [ ]");
  }

  @Test
  void aFormulaOnAMachineWithoutAHomeLeavesNoTrace() {
    Path nowhere = home.resolve("nowhere");
    assertThat(type(nowhere, "formula", "D-76", "--json").out()).contains("\"formula\" : \"D-76\"");
    assertThat(nowhere).doesNotExist();
  }
}
