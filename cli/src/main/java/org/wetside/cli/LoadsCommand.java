package org.wetside.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.TimeWords;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.web.plan.LoadBody;
import org.wetside.web.plan.LoadView;
import org.wetside.web.plan.LoadsView;
import org.wetside.web.process.RinseBody;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside loads}: list, make, show, take apart. */
@Command(name = "loads", description = "List the loads, make one of waiting rolls, take one apart.")
final class LoadsCommand extends HomeCommand<LoadsView> {
  @Option(
      names = "--make",
      paramLabel = "ROLLS",
      description = "numbers of waiting rolls with commas, from the bottom of the tank")
  @Nullable String make;

  @Option(names = "--tank", paramLabel = "NAME", description = "the tank")
  @Nullable String tank;

  @Option(names = "--process", paramLabel = "NAME", description = "small-tank when not said")
  @Nullable String process;

  @Option(names = "--developer", paramLabel = "NAME", description = "for example D-76")
  @Nullable String developer;

  @Option(names = "--dilution", paramLabel = "DILUTION", description = "stock when not said")
  @Nullable String dilution;

  @Option(names = "--temp", paramLabel = "TEMP", description = "of the developer, 20C or 68F")
  @Nullable String temp;

  @Option(
      names = "--time",
      paramLabel = "TIME",
      description = "your own development time, in place of the one found")
  @Nullable String time;

  @Option(names = "--source", paramLabel = "TEXT", description = "where your own time stands")
  @Nullable String source;

  @Option(names = "--fill", paramLabel = "VOLUME", description = "the smallest when not said")
  @Nullable String fill;

  @Option(
      names = "--bottle",
      paramLabel = "BATH=LETTER",
      description = "bottle of a bath, for example fixer=F; may be repeated")
  @Nullable Map<String, String> bottles;

  @Option(names = "--note", paramLabel = "TEXT", description = "a name for the load")
  @Nullable String note;

  @Option(names = "--show", paramLabel = "LOAD", description = "one load by its number")
  @Nullable String show;

  @Option(names = "--dissolve", paramLabel = "LOAD", description = "take a planned load apart")
  @Nullable String dissolve;

  @Option(
      names = "--rinse",
      paramLabel = "LOAD",
      description = "lead it by its process with a rinse, with --before")
  @Nullable String rinse;

  @Option(names = "--before", paramLabel = "STEP", description = "the step after the rinse")
  @Nullable String before;

  @Override
  boolean writes() {
    return make != null || dissolve != null || rinse != null;
  }

  @Override
  LoadsView answerHere(Wetside wetside) {
    if (make != null) {
      return one(wetside, wetside.makeLoad().make(body(make).wish()));
    }
    if (dissolve != null) {
      long id = number(dissolve);
      wetside.makeLoad().dissolve(id);
      return one(wetside, wetside.listLoads().find(id).orElseThrow());
    }
    if (rinse != null) {
      Load load = found(wetside, rinse);
      String process = wetside.addRinse().to(load.process(), rinseBody().step()).slug();
      return one(wetside, wetside.makeLoad().ledBy(load.id(), process));
    }
    if (show != null) {
      return one(wetside, found(wetside, show));
    }
    return LoadsView.of(wetside);
  }

  @Override
  ServerRequest request() {
    if (make != null) {
      return ServerRequest.post("/api/loads?as=list", "application/json", JsonText.of(body(make)));
    }
    if (dissolve != null) {
      return new ServerRequest("DELETE", "/api/loads/" + number(dissolve) + "?as=list", "", "");
    }
    if (rinse != null) {
      return ServerRequest.post(
          "/api/loads/" + number(rinse) + "/rinse?as=list",
          "application/json",
          JsonText.of(rinseBody()));
    }
    return ServerRequest.get(
        show == null ? "/api/loads" : "/api/loads/" + number(show) + "?as=list");
  }

  @Override
  Class<LoadsView> view() {
    return LoadsView.class;
  }

  @Override
  void print(LoadsView view, PrintWriter out) {
    if (view.loads().isEmpty()) {
      out.println("No load is planned and none is at the Bench.");
    }
    for (LoadView load : view.loads()) {
      out.println(
          load.load()
              + "  "
              + load.state()
              + (load.run() == null ? "" : ", run " + load.run())
              + "  "
              + String.join(", ", load.rolls())
              + " in "
              + load.tank());
      out.println(
          "   "
              + load.developer()
              + " "
              + load.dilution()
              + ", "
              + load.temperatureC()
              + " °C, "
              + TimeWords.clock(TimeSpan.ofSeconds(load.seconds()))
              + " ("
              + load.standing()
              + ", "
              + load.source()
              + "), "
              + load.volumeMl()
              + " mL");
      OrderWarnings.print(load.warnings(), "   ", "wetside loads --rinse " + load.load(), out);
    }
  }

  private LoadBody body(String rolls) {
    return new LoadBody(
        List.of(rolls.split(",", -1)),
        tank,
        process,
        developer,
        dilution,
        temp,
        time,
        source,
        fill,
        bottles == null ? null : new LinkedHashMap<>(bottles),
        note);
  }

  private RinseBody rinseBody() {
    return before == null ? new RinseBody(null) : RinseBody.parse(before);
  }

  private static Load found(Wetside wetside, String wanted) {
    return wetside
        .listLoads()
        .find(number(wanted))
        .orElseThrow(() -> new BadValueException("load", wanted, "there is no such load"));
  }

  private static LoadsView one(Wetside wetside, Load load) {
    return new LoadsView(List.of(LoadView.of(wetside, load)));
  }

  private static long number(String text) {
    try {
      return Long.parseLong(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException("load", text, "a whole number, for example 3");
    }
  }
}
