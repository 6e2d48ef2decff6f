package org.wetside.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.waste.HandInBody;
import org.wetside.web.waste.JugBody;
import org.wetside.web.waste.JugView;
import org.wetside.web.waste.PouringBody;
import org.wetside.web.waste.TakeBackBody;
import org.wetside.web.waste.WasteView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside waste}: the jugs, what is poured into them, when they are handed in. */
@Command(
    name = "waste",
    description = "List the jugs for waste, show one, pour into it, hand it in.")
final class WasteCommand extends HomeCommand<WasteView> {
  private static final String ALL = "/api/waste";

  @Parameters(arity = "0..1", paramLabel = "JUG", description = "one jug")
  @Nullable String jug;

  @Option(
      names = "--add",
      paramLabel = "KIND",
      description = "a new jug: silver-bearing, developer, stop or other; with --holds")
  @Nullable String add;

  @Option(names = "--holds", paramLabel = "VOLUME", description = "how much it takes")
  @Nullable String holds;

  @Option(
      names = "--pour",
      paramLabel = "CONTENTS",
      description = "poured in by hand, with --volume and its --bath")
  @Nullable String pour;

  @Option(
      names = "--bottle",
      paramLabel = "LETTER",
      description = "poured in from a bottle; all of it, discarding it, without --volume")
  @Nullable String bottle;

  @Option(names = "--bath", paramLabel = "BATH", description = "fixer, developer, stop bath …")
  @Nullable String bath;

  @Option(names = "--volume", paramLabel = "VOLUME", description = "how much, for example 500mL")
  @Nullable String volume;

  @Option(names = "--hand-in", paramLabel = "DAY", description = "handed in that day, with --to")
  @Nullable String handIn;

  @Option(names = "--to", paramLabel = "WHOM", description = "who took it")
  @Nullable String to;

  @Option(
      names = "--take-back",
      paramLabel = "NUMBER",
      description = "a pouring that was not one; --note says why")
  @Nullable String takeBack;

  @Option(names = "--note", paramLabel = "TEXT", description = "goes into its book")
  @Nullable String note;

  @Mixin WastePaperOptions paper = new WastePaperOptions();

  private Optional<PaperFile> file = Optional.empty();

  @Override
  boolean writes() {
    return wishes() > 0;
  }

  private long wishes() {
    return Stream.of(add, pour, bottle, handIn, takeBack).filter(Objects::nonNull).count();
  }

  private void check() {
    boolean printed = paper.pdf != null;
    if (wishes() + (printed ? 1 : 0) > 1) {
      throw new BadValueException(
          "wish",
          "several at once",
          "choose one of --add, --pour, --bottle, --hand-in, --take-back, --pdf");
    }
    if ((wishes() == 1 || printed) && jug == null) {
      throw new BadValueException("jug", "", "say which, for example wetside waste W1 …");
    }
  }

  @Override
  WasteView answerHere(Wetside wetside) {
    check();
    file = paper.file();
    if (jug == null) {
      return WasteView.of(wetside.wasteBook().keepJugs());
    }
    if (add != null) {
      wetside.wasteBook().keepJugs().add(jugBody().described());
    } else if (pour != null || bottle != null) {
      pouring().to(wetside.wasteBook().pourWaste(), jug);
    } else if (handIn != null) {
      handing().to(wetside.wasteBook().handIn(), jug);
    } else if (takeBack != null) {
      takingBack().to(wetside.wasteBook().pourWaste(), jug);
    }
    return WasteView.one(wetside.wasteBook().keepJugs().of(jug), wetside.wasteBook().keepJugs());
  }

  @Override
  Optional<WasteView> answerThere(ServerCall server) {
    check();
    file = paper.file();
    return super.answerThere(server);
  }

  /** The paper is drawn here, from the same answer. */
  @Override
  void received(WasteView view) {
    LocalDate today = LocalDate.now(HomeCommand.CLOCK);
    file.ifPresent(wanted -> paper.write(wanted, view.jugs().get(0), today));
  }

  @Override
  ServerRequest request() {
    if (jug == null) {
      return ServerRequest.get(ALL);
    }
    String one = ALL + "/" + ServerRequest.inPath(jug);
    if (add != null) {
      return post(ALL, jugBody());
    }
    if (pour != null || bottle != null) {
      return post(one + "/poured", pouring());
    }
    if (handIn != null) {
      return post(one + "/handed-in", handing());
    }
    return takeBack == null ? ServerRequest.get(one) : post(one + "/taken-back", takingBack());
  }

  private static ServerRequest post(String path, Record body) {
    return ServerRequest.post(path, "application/json", JsonText.of(body));
  }

  @Override
  Class<WasteView> view() {
    return WasteView.class;
  }

  private JugBody jugBody() {
    return new JugBody(jug, add, millilitres(holds));
  }

  private PouringBody pouring() {
    return new PouringBody(bottle, pour, bath, millilitres(volume), note);
  }

  private HandInBody handing() {
    return new HandInBody(handIn, to, note);
  }

  private TakeBackBody takingBack() {
    String number = String.valueOf(takeBack).strip();
    if (!number.matches("\\d{1,15}")) {
      throw new BadValueException("pouring", number, "its number in the book, for example 4");
    }
    return new TakeBackBody(Long.valueOf(number), note);
  }

  private static @Nullable Double millilitres(@Nullable String text) {
    return text == null ? null : Volume.parse(text).millilitres();
  }

  @Override
  void print(WasteView view, PrintWriter out) {
    if (file.isPresent()) {
      out.println(paper.said(view.jugs().get(0)));
      return;
    }
    if (view.jugs().isEmpty()) {
      out.println(
          "No jug for waste is there; add one: wetside waste W1 --add silver-bearing --holds 5L");
    }
    for (JugView one : view.jugs()) {
      out.println(
          one.jug()
              + "  "
              + one.kind()
              + "  "
              + words(one.filledMl())
              + " of "
              + words(one.holdsMl()));
      out.println("    " + one.silverWords());
      if (!one.unknown().isEmpty()) {
        out.println(
            "    "
                + String.join(", ", one.unknown())
                + ": no caution on file: read the maker's safety data sheet first");
      }
      if (view.jugs().size() == 1) {
        details(one, out);
      }
    }
    out.println(view.rule());
  }

  private static void details(JugView jug, PrintWriter out) {
    for (JugView.PouredView one : jug.inside()) {
      out.println(
          "    "
              + one.line()
              + "  "
              + one.at()
              + "  "
              + words(one.volumeMl())
              + "  "
              + one.what()
              + (one.bottle().isEmpty() ? "" : " from bottle " + one.bottle())
              + (one.note().isEmpty() ? "" : ", " + one.note()));
    }
    jug.handedIn()
        .forEach(
            one ->
                out.println(
                    "    handed in "
                        + one.on()
                        + " to "
                        + one.to()
                        + ", "
                        + words(one.volumeMl())));
    for (CautionView caution : jug.cautions()) {
      out.println("    Caution: " + said(caution));
    }
    jug.disposal().forEach(way -> out.println("    Where it goes: " + said(way)));
  }

  private static String said(CautionView caution) {
    return caution.text() + " (" + caution.source() + ", " + caution.standing() + ")";
  }

  private static String words(double millilitres) {
    return Units.METRIC.words(Volume.ofMillilitres(millilitres));
  }
}
