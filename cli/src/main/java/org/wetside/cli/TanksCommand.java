package org.wetside.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.web.equipment.TankView;
import org.wetside.web.equipment.TanksView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside tanks}: the tanks, and what they take. */
@Command(name = "tanks", description = "List the tanks, write one down, change it, take it away.")
final class TanksCommand extends HomeCommand<TanksView> {
  private static final String ALL = "/api/tanks";

  @Parameters(arity = "0..1", paramLabel = "TANK", description = "name of one")
  @Nullable String name;

  @Option(names = "--add", description = "write it down, with what follows")
  boolean add;

  @Option(names = "--change", description = "say anew what it takes")
  boolean change;

  @Option(names = "--remove", description = "take it away")
  boolean remove;

  @Option(
      names = "--vessel",
      paramLabel = "VESSEL",
      description = "small, large, rotary or tray; small when not said")
  @Nullable String vessel;

  @Option(
      names = "--takes",
      paramLabel = "FORMAT=N*VOLUME",
      description = "reels of a format, and the liquid for one: 135=2*300mL; may be repeated")
  @Nullable Map<String, String> takes;

  @Option(names = "--holds", paramLabel = "VOLUME", description = "the most liquid it takes")
  @Nullable String holds;

  @Option(
      names = "--check",
      paramLabel = "TEXT",
      description = "looked at when it is closed, in order; a star in front: always asked")
  @Nullable List<String> checks;

  @Option(names = "--usual-checks", description = "give it the usual list back")
  boolean usualChecks;

  @Override
  boolean writes() {
    return add || change || remove;
  }

  @Override
  TanksView answerHere(Wetside wetside) {
    checkOne();
    if (name == null) {
      return TanksView.of(wetside);
    }
    if (add) {
      Tank tank = view(name).tank();
      wetside.keepTanks().add(tank);
      view(name).keep(wetside, tank);
      return one(wetside, tank);
    }
    Tank known = known(wetside, name);
    if (change) {
      Tank tank = view(known.name()).over(known);
      view(known.name()).keep(wetside, tank);
      return one(wetside, tank);
    }
    if (remove) {
      wetside.keepTanks().remove(known.name());
      return TanksView.of(wetside);
    }
    return one(wetside, known);
  }

  private static Tank known(Wetside wetside, String name) {
    return wetside
        .keepTanks()
        .find(name)
        .orElseThrow(() -> new BadValueException("tank", name, "there is no tank of that name"));
  }

  private static TanksView one(Wetside wetside, Tank tank) {
    return new TanksView(List.of(TankView.of(wetside, tank)));
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (name == null) {
      return ServerRequest.get(ALL);
    }
    if (add) {
      return ServerRequest.post(ALL, "application/json", JsonText.of(view(name)))
          .with("as", "list");
    }
    String one = ALL + "/" + ServerRequest.inPath(name);
    if (change) {
      return new ServerRequest("PUT", one, "application/json", JsonText.of(view(name)))
          .with("as", "list");
    }
    return remove
        ? new ServerRequest("DELETE", one, "", "")
        : ServerRequest.get(one).with("as", "list");
  }

  private void checkOne() {
    int wishes = (add ? 1 : 0) + (change ? 1 : 0) + (remove ? 1 : 0);
    if (wishes > 1) {
      throw new BadValueException(
          "wish", "several at once", "choose one of --add, --change, --remove");
    }
    if (wishes == 1 && name == null) {
      throw new BadValueException("tank", "", "say its name, for example Double");
    }
  }

  private TankView view(String tank) {
    return new TankView(
        tank,
        vessel,
        takes == null ? null : rooms(takes),
        holds == null ? null : Volume.parse(holds).millilitres(),
        closing());
  }

  private static List<TankView.RoomView> rooms(Map<String, String> takes) {
    List<TankView.RoomView> rooms = new ArrayList<>();
    takes.forEach((format, text) -> rooms.add(room(format, text)));
    return rooms;
  }

  private @Nullable List<TankView.ClosingView> closing() {
    if (checks == null) {
      return usualChecks ? List.of() : null;
    }
    return ClosingItem.parse(String.join("\n", checks)).stream()
        .map(item -> new TankView.ClosingView(item.id(), item.text(), item.always()))
        .toList();
  }

  private static TankView.RoomView room(String format, String text) {
    String[] parts = text.split("\\*", 2);
    try {
      if (parts.length == 2) {
        return new TankView.RoomView(
            format, Integer.parseInt(parts[0].strip()), Volume.parse(parts[1]).millilitres());
      }
    } catch (NumberFormatException notOne) {
      // said below
    }
    throw new BadValueException(
        "what the tank takes", format + "=" + text, "write it as 135=2*300mL");
  }

  @Override
  Class<TanksView> view() {
    return TanksView.class;
  }

  @Override
  void print(TanksView view, PrintWriter out) {
    if (view.tanks().isEmpty()) {
      out.println("No tank is written down.");
    }
    for (TankView tank : view.tanks()) {
      StringBuilder line = new StringBuilder(tank.name() + "  " + tank.vessel() + " tank");
      for (TankView.RoomView room :
          tank.rooms() == null ? List.<TankView.RoomView>of() : tank.rooms()) {
        line.append("  ")
            .append(room.most())
            .append(" × ")
            .append(room.format())
            .append(", ")
            .append(Metric.volume(room.eachMl()))
            .append(" each");
      }
      out.println(
          line + (tank.holdsMl() == null ? "" : "  holds " + Metric.volume(tank.holdsMl())));
      if (name != null && tank.checks() != null) {
        tank.checks()
            .forEach(check -> out.println("   " + (check.always() ? "* " : "  ") + check.text()));
      }
    }
  }
}
