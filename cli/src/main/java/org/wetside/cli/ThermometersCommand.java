package org.wetside.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.thermal.Thermometer;
import org.wetside.web.equipment.ComparisonBody;
import org.wetside.web.equipment.ThermometerView;
import org.wetside.web.equipment.ThermometersView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside thermometers}: how far each is off. */
@Command(
    name = "thermometers",
    description = "List the thermometers, add one, compare it with the truth, take it away.")
final class ThermometersCommand extends HomeCommand<ThermometersView> {
  private static final String ALL = "/api/thermometers";

  @Parameters(arity = "0..1", paramLabel = "THERMOMETER", description = "name of one")
  @Nullable String name;

  @Option(names = "--add", description = "write it down")
  boolean add;

  @Option(names = "--shown", paramLabel = "TEMP", description = "compared: what it showed")
  @Nullable String shown;

  @Option(names = "--truth", paramLabel = "TEMP", description = "what was true; 0C in melting ice")
  @Nullable String truth;

  @Option(names = "--how", paramLabel = "TEXT", description = "for example \"ice point\"")
  @Nullable String how;

  @Option(names = "--remove", description = "take it away")
  boolean remove;

  @Override
  boolean writes() {
    return add || remove || compares();
  }

  private boolean compares() {
    return shown != null || truth != null;
  }

  @Override
  ThermometersView answerHere(Wetside wetside) {
    checkOne();
    if (name == null) {
      return ThermometersView.of(wetside);
    }
    if (add) {
      wetside.keepThermometers().add(name.strip());
      return one(known(wetside, name.strip()));
    }
    Thermometer known = known(wetside, name);
    if (compares()) {
      wetside
          .keepThermometers()
          .compared(known.name(), comparison().offset(LocalDate.now(HomeCommand.CLOCK)));
      return one(known(wetside, known.name()));
    }
    if (remove) {
      wetside.keepThermometers().remove(known.name());
      return ThermometersView.of(wetside);
    }
    return one(known);
  }

  private static Thermometer known(Wetside wetside, String name) {
    return wetside
        .keepThermometers()
        .find(name)
        .orElseThrow(
            () -> new BadValueException("thermometer", name, "there is none of that name"));
  }

  private static ThermometersView one(Thermometer thermometer) {
    return new ThermometersView(List.of(ThermometerView.of(thermometer)));
  }

  private ComparisonBody comparison() {
    return new ComparisonBody(shown, truth, how);
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (name == null) {
      return ServerRequest.get(ALL);
    }
    if (add) {
      ThermometerView fresh = new ThermometerView(name, null, null, null, null, null);
      return ServerRequest.post(ALL, "application/json", JsonText.of(fresh)).with("as", "list");
    }
    String one = ALL + "/" + ServerRequest.inPath(name);
    if (compares()) {
      return ServerRequest.post(one + "/comparisons", "application/json", JsonText.of(comparison()))
          .with("as", "list");
    }
    return remove
        ? new ServerRequest("DELETE", one, "", "")
        : ServerRequest.get(one).with("as", "list");
  }

  private void checkOne() {
    int wishes = (add ? 1 : 0) + (remove ? 1 : 0) + (compares() ? 1 : 0);
    if (wishes > 1) {
      throw new BadValueException(
          "wish", "several at once", "choose one of --add, --shown with --truth, --remove");
    }
    if (wishes == 1 && name == null) {
      throw new BadValueException("thermometer", "", "say its name, for example \"glass rod\"");
    }
  }

  @Override
  Class<ThermometersView> view() {
    return ThermometersView.class;
  }

  @Override
  void print(ThermometersView view, PrintWriter out) {
    if (view.thermometers().isEmpty()) {
      out.println("No thermometer is written down.");
    }
    for (ThermometerView one : view.thermometers()) {
      Double offset = one.offsetK();
      Double at = one.atC();
      out.println(
          one.name()
              + (offset == null || at == null
                  ? "  not compared yet"
                  : String.format("  %+.1f K at ", offset)
                      + Metric.degrees(at)
                      + ", found "
                      + one.found()));
    }
  }
}
