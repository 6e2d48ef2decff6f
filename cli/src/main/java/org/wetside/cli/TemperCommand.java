package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.Temper;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.thermal.TemperingQuestion;
import org.wetside.web.mixing.BathTemperView;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.mixing.TemperLoadQuery;
import org.wetside.web.mixing.TemperLoadView;
import org.wetside.web.mixing.TemperQuery;
import org.wetside.web.mixing.TemperView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside temper --to 20C --total 1L --cold 9C --hot 50C}, {@code temper --load 3}. */
@Command(
    name = "temper",
    description = "Say which waters to pour for a volume at a temperature, or for a load.")
final class TemperCommand extends HomeCommand<Object> {
  @Option(names = "--to", paramLabel = "TEMP", description = "temperature wanted, for example 20C")
  @Nullable String to;

  @Option(names = "--total", paramLabel = "VOLUME", description = "volume wanted, for example 1L")
  @Nullable String total;

  @Option(names = "--cold", paramLabel = "TEMP", description = "the cold water, for example 9C")
  @Nullable String cold;

  @Option(names = "--hot", paramLabel = "TEMP", description = "the hot water, for example 50C")
  @Nullable String hot;

  @Option(
      names = "--ice",
      paramLabel = "TEMP",
      description = "a third water, from the ice-box; used when the others do not reach")
  @Nullable String ice;

  @Option(
      names = "--stock",
      paramLabel = "VOLUME@TEMP",
      description = "stock or concentrate that is part of the total, for example 300mL@18C")
  @Nullable String stock;

  @Option(
      names = "--vessel",
      paramLabel = "J/K@TEMP",
      description = "heat capacity and temperature of the vessel, for example 150J/K@15C")
  @Nullable String vessel;

  @Option(
      names = "--load",
      paramLabel = "LOAD",
      description = "all baths of that load at once; waters not said are those kept")
  @Nullable String load;

  @Option(
      names = "--room",
      paramLabel = "TEMP",
      description = "with --load: what the room and the bottles have")
  @Nullable String room;

  @Option(
      names = "--tau",
      paramLabel = "TIME",
      description = "with --load: time constant of such a bath as measured, for example 60min")
  @Nullable String tau;

  @Override
  Optional<Object> answerAnywhere() {
    if (load != null) {
      refuse(to, "--to", "the temperature is the load's");
      refuse(total, "--total", "the volume is the load's");
      refuse(stock, "--stock", "the stock is the load's");
      refuse(vessel, "--vessel", "only one bath is reckoned with it");
      return Optional.empty();
    }
    refuse(room, "--room", "only with --load");
    refuse(tau, "--tau", "only with --load");
    TemperingQuestion question =
        new TemperQuery(to, total, cold, hot, ice, stock, vessel).question();
    return Optional.of(TemperView.of(question, new Temper().answer(question), Units.METRIC));
  }

  private static void refuse(@Nullable String given, String option, String why) {
    if (given != null) {
      throw new BadValueException(option, given, why);
    }
  }

  @Override
  Object answerHere(Wetside wetside) {
    return TemperLoadView.of(
        wetside.temperLoad().of(number(), new TemperLoadQuery(cold, hot, ice, room, tau).wish()),
        Units.METRIC);
  }

  @Override
  Optional<Object> answerThere(ServerCall server) {
    return server.ask(request(), TemperLoadView.class).map(view -> view);
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/loads/" + number() + "/temper")
        .with("cold", cold)
        .with("hot", hot)
        .with("ice", ice)
        .with("room", room)
        .with("tau", tau);
  }

  @Override
  Class<Object> view() {
    return Object.class;
  }

  private long number() {
    String text = String.valueOf(load).strip();
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException("load", text, "a whole number, for example 3");
    }
  }

  @Override
  void print(Object view, PrintWriter out) {
    if (view instanceof TemperLoadView all) {
      printAll(all, out);
    } else {
      printOne((TemperView) view, out);
    }
  }

  private static void printAll(TemperLoadView all, PrintWriter out) {
    int number = 1;
    for (BathTemperView bath : all.baths()) {
      out.println(number++ + ". " + bath.name() + ": " + bath.text());
      if (!bath.forecast().isEmpty()) {
        out.println("   " + bath.forecast());
      }
    }
    if (!all.alternative().isEmpty()) {
      out.println(all.alternative());
    }
    all.cautions().forEach(caution -> out.println("Caution: " + caution.text()));
    all.notes().forEach(note -> out.println("Note: " + note));
  }

  private static void printOne(TemperView view, PrintWriter out) {
    out.println(Metric.volume(view.totalMl()) + " at " + Metric.degrees(view.targetC()));
    for (TemperView.PourView part : view.pour()) {
      out.printf(
          "  %-6s %s at %s%n",
          part.name(), Metric.volume(part.volumeMl()), Metric.degrees(part.temperatureC()));
    }
    if (view.stockMl() > 0) {
      out.printf(
          "  %-6s %s; the water alone has %s%n",
          "stock", Metric.volume(view.stockMl()), Metric.degrees(view.waterC()));
    }
    out.println(view.alternative());
    for (CautionView caution : view.cautions()) {
      out.println("Caution: " + caution.text());
    }
  }
}
