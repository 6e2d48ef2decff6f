package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.web.equipment.WaterView;
import org.wetside.web.equipment.WatersView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside waters}: what the waters of the house usually have, hard or soft. */
@Command(
    name = "waters",
    description = "List the waters of the house, write one down, take it away.")
final class WatersCommand extends HomeCommand<WatersView> {
  private static final String ALL = "/api/waters";

  @Parameters(arity = "0..1", paramLabel = "WATER", description = "name of one")
  @Nullable String name;

  @Option(names = "--usual", paramLabel = "TEMP", description = "write down what it usually has")
  @Nullable String usual;

  @Option(
      names = "--hardness",
      paramLabel = "WORD",
      description = "with --usual: soft, hard or distilled")
  @Nullable String hardness;

  @Option(names = "--remove", description = "take it away")
  boolean remove;

  @Override
  boolean writes() {
    return remove || usual != null;
  }

  @Override
  WatersView answerHere(Wetside wetside) {
    check();
    if (usual != null) {
      wetside.keepWaters().put(said().water());
    } else if (remove && !wetside.keepWaters().remove(String.valueOf(name))) {
      throw new BadValueException("water", String.valueOf(name), "there is none of that name");
    }
    return WatersView.of(wetside);
  }

  private WaterView said() {
    return new WaterView(name, usual == null ? null : Temperature.parse(usual).celsius(), hardness);
  }

  @Override
  ServerRequest request() {
    check();
    if (usual != null) {
      said().water();
      return new ServerRequest("PUT", ALL, "application/json", JsonText.of(said()));
    }
    return remove
        ? new ServerRequest(
            "DELETE", ALL + "/" + ServerRequest.inPath(String.valueOf(name)), "", "")
        : ServerRequest.get(ALL);
  }

  private void check() {
    if (remove && usual != null) {
      throw new BadValueException("wish", "two at once", "choose one of --usual, --remove");
    }
    if (name == null && (writes() || hardness != null)) {
      throw new BadValueException("water", "", "say its name, for example \"cold tap\"");
    }
    if (name != null && !writes()) {
      throw new BadValueException("water", name, "say what it has with --usual, or --remove");
    }
  }

  @Override
  Class<WatersView> view() {
    return WatersView.class;
  }

  @Override
  void print(WatersView view, PrintWriter out) {
    if (view.waters().isEmpty()) {
      out.println("No water is written down.");
    }
    for (WaterView one : view.waters()) {
      Double has = one.temperatureC();
      out.println(
          one.name()
              + "  "
              + (has == null ? "" : Metric.degrees(has))
              + ("not said".equals(one.hardness()) ? "" : ", " + one.hardness()));
    }
  }
}
