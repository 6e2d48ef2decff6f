package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.times.ImportTimes;
import org.wetside.app.times.OwnLine;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.times.KeptView;
import org.wetside.web.times.OwnTimeView;
import org.wetside.web.times.TimesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside times}: the user's own times listed, added, taken in, given out, withdrawn. */
@Command(
    name = "times",
    description = {
      "List your own development times, or:",
      "  --add FILM DEVELOPER --minutes 9:45 --source \"leaflet 2024\" …",
      "  --import FILE, --export FILE, --withdraw ID"
    })
final class TimesCommand extends HomeCommand<TimesView> {
  @Option(names = "--add", description = "keep one line from a leaflet")
  boolean add;

  @Option(
      names = "--import",
      paramLabel = "FILE",
      description = "take in a CSV file, all or nothing")
  @Nullable Path file;

  @Option(
      names = "--export",
      paramLabel = "FILE",
      description = "write a CSV file that can be taken in")
  @Nullable Path export;

  @Option(
      names = "--withdraw",
      paramLabel = "ID",
      description = "use an entry no more, for example own-3")
  @Nullable String withdraw;

  @Parameters(paramLabel = "FILM DEVELOPER", description = "with --add", arity = "0..2")
  List<String> names = List.of();

  @Option(names = "--dilution", paramLabel = "DILUTION", description = "stock, 1+1 or a letter")
  String dilution = "";

  @Option(names = "--ei", paramLabel = "EI", description = "exposure index")
  String ei = "";

  @Option(names = "--temp", paramLabel = "TEMP", description = "for example 20C or 68F")
  String temp = "";

  @Option(names = "--minutes", paramLabel = "TIME", description = "for example 9:45")
  String minutes = "";

  @Option(names = "--vessel", paramLabel = "TANK", description = "small, large, rotary or tray")
  String vessel = "";

  @Option(names = "--agitation", paramLabel = "WAY", description = "ordinary when not said")
  String agitation = "";

  @Option(names = "--contrast", paramLabel = "WORDS", description = "contrast aimed at, as printed")
  String contrast = "";

  @Option(names = "--source", paramLabel = "WORDS", description = "where it is printed")
  String source = "";

  @Override
  boolean writes() {
    return add || file != null || withdraw != null;
  }

  @Override
  TimesView answerHere(Wetside wetside) {
    checkOne();
    if (add) {
      return TimesView.kept(KeptView.of("time", wetside.addTime().add(line())));
    }
    if (file != null) {
      return TimesView.kept(KeptView.of("file " + file, wetside.importTimes().from(bytes(file))));
    }
    if (withdraw != null) {
      wetside.withdrawTime().withdraw(withdraw);
    }
    List<OwnTimeView> own = wetside.listTimes().inUse().stream().map(OwnTimeView::of).toList();
    return export == null
        ? TimesView.listed(own)
        : TimesView.listed(own).withCsv(wetside.exportTimes().csv());
  }

  private void checkOne() {
    int wishes =
        (add ? 1 : 0)
            + (file == null ? 0 : 1)
            + (export == null ? 0 : 1)
            + (withdraw == null ? 0 : 1);
    if (wishes > 1) {
      throw new BadValueException(
          "wish", wishes + " at once", "choose one of --add, --import, --export, --withdraw");
    }
    if (!add && !names.isEmpty()) {
      throw new BadValueException(
          "wish", String.join(" ", names), "a film and a developer belong to --add");
    }
    if (add && names.size() != 2) {
      throw new BadValueException(
          "time", String.join(" ", names), "write film and developer: --add \"TRI-X 400\" D-76");
    }
  }

  private OwnLine line() {
    return new OwnLine(
        names.get(0),
        names.get(1),
        dilution,
        ei,
        temp,
        minutes,
        vessel,
        agitation,
        contrast,
        source);
  }

  private static byte[] bytes(Path from) {
    try {
      return Files.readAllBytes(from);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (add) {
      return ServerRequest.post("/api/times", "application/json", JsonText.of(line()));
    }
    if (file != null) {
      return ServerRequest.post(
          "/api/times/import", "text/csv; charset=utf-8", ImportTimes.text(bytes(file)));
    }
    if (withdraw != null) {
      return ServerRequest.post("/api/times/withdraw", "", "").with("id", withdraw);
    }
    return ServerRequest.get("/api/times").with("csv", export == null ? null : "yes");
  }

  @Override
  Class<TimesView> view() {
    return TimesView.class;
  }

  @Override
  void print(TimesView view, PrintWriter out) {
    if (view.kept() != null) {
      out.println("kept " + view.kept().kept() + ", already on file " + view.kept().alreadyThere());
      view.kept().entries().forEach(entry -> out.println("  " + entry));
      return;
    }
    if (export != null) {
      out.println("wrote " + view.own().size() + " times to " + export);
      return;
    }
    if (view.own().isEmpty()) {
      out.println("No times of your own yet. wetside times --add keeps one.");
    }
    for (OwnTimeView own : view.own()) {
      out.println(
          own.id()
              + "  "
              + own.film()
              + "  "
              + own.developer()
              + " "
              + own.dilution()
              + "  EI "
              + own.ei()
              + "  "
              + own.temp()
              + "  "
              + own.minutes()
              + "  "
              + own.vessel()
              + "  "
              + own.source());
    }
  }

  @Override
  void received(TimesView view) {
    if (export != null && view.csv() != null) {
      try {
        Files.writeString(export, view.csv());
      } catch (IOException unwritable) {
        throw new UncheckedIOException(unwritable);
      }
    }
  }
}
