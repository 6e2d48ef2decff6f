package org.wetside.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.process.ProcessDraft;
import org.wetside.app.process.ProcessText;
import org.wetside.app.times.TimeWords;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.web.process.CopyBody;
import org.wetside.web.process.ProcessBody;
import org.wetside.web.process.ProcessStepView;
import org.wetside.web.process.ProcessView;
import org.wetside.web.process.ProcessesView;
import org.wetside.web.process.RinseBody;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside processes}: list, show, copy, write down, change, take away. */
@Command(
    name = "processes",
    description = "List the processes, show one, copy it, write one of your own.")
final class ProcessesCommand extends HomeCommand<ProcessesView> {
  private static final String ALL = "/api/processes";

  @Option(names = "--show", paramLabel = "PROCESS", description = "one with its steps")
  @Nullable String show;

  @Option(
      names = "--text",
      paramLabel = "PROCESS",
      description = "one as the text that --add and --change read")
  @Nullable String text;

  @Option(names = "--copy", paramLabel = "PROCESS", description = "copy one, with --as")
  @Nullable String copy;

  @Option(names = "--as", paramLabel = "NAME", description = "short name of the copy")
  @Nullable String as;

  @Option(names = "--name", paramLabel = "TEXT", description = "the copy as people call it")
  @Nullable String name;

  @Option(names = "--add", paramLabel = "FILE", description = "keep a new one from its text")
  @Nullable Path add;

  @Option(names = "--change", paramLabel = "FILE", description = "change one of yours by its text")
  @Nullable Path change;

  @Option(names = "--remove", paramLabel = "PROCESS", description = "take one of yours away")
  @Nullable String remove;

  @Option(
      names = "--rinse",
      paramLabel = "PROCESS",
      description = "put a rinse between two of its baths, with --before")
  @Nullable String rinse;

  @Option(names = "--before", paramLabel = "STEP", description = "the step after the rinse")
  @Nullable String before;

  @Override
  boolean writes() {
    return copy != null || add != null || change != null || remove != null || rinse != null;
  }

  @Override
  ProcessesView answerHere(Wetside wetside) {
    checkOne();
    if (copy != null) {
      return one(wetside, wetside.keepProcess().copy(copy, said(as), said(name)).orRefuse());
    }
    if (add != null) {
      return one(wetside, wetside.keepProcess().add(draft(add)).orRefuse());
    }
    if (change != null) {
      ProcessDraft draft = draft(change);
      return one(wetside, wetside.keepProcess().change(draft.slug(), draft).orRefuse());
    }
    if (remove != null) {
      return one(wetside, wetside.removeProcess().remove(remove));
    }
    if (rinse != null) {
      return one(wetside, wetside.addRinse().to(rinse, rinseBody().step()));
    }
    if (text != null) {
      return ProcessesView.withText(found(wetside, text), wetside.checkOrder());
    }
    return show == null
        ? ProcessesView.of(wetside.findProcess().all(), wetside.checkOrder())
        : one(wetside, found(wetside, show));
  }

  private static ProcessesView one(Wetside wetside, FilmProcess process) {
    return ProcessesView.one(process, wetside.checkOrder());
  }

  private RinseBody rinseBody() {
    return before == null ? new RinseBody(null) : RinseBody.parse(before);
  }

  private static FilmProcess found(Wetside wetside, String slug) {
    return wetside.findProcess().of(slug);
  }

  @Override
  ServerRequest request() {
    checkOne();
    if (copy != null) {
      return asList(
          ServerRequest.post(
              one(copy) + "/copy", "application/json", JsonText.of(new CopyBody(as, name))));
    }
    if (add != null) {
      return asList(
          ServerRequest.post(ALL, "application/json", JsonText.of(ProcessBody.of(draft(add)))));
    }
    if (change != null) {
      ProcessDraft draft = draft(change);
      return asList(
          new ServerRequest(
              "PUT", one(draft.slug()), "application/json", JsonText.of(ProcessBody.of(draft))));
    }
    if (remove != null) {
      return asList(new ServerRequest("DELETE", one(remove), "", ""));
    }
    if (rinse != null) {
      return asList(
          ServerRequest.post(one(rinse) + "/rinse", "application/json", JsonText.of(rinseBody())));
    }
    if (text != null) {
      return ServerRequest.get(one(text)).with("text", "yes");
    }
    return show == null ? ServerRequest.get(ALL) : asList(ServerRequest.get(one(show)));
  }

  private static ServerRequest asList(ServerRequest request) {
    return request.with("as", "list");
  }

  private static String one(String slug) {
    return ALL + "/" + ServerRequest.inPath(slug);
  }

  @Override
  Class<ProcessesView> view() {
    return ProcessesView.class;
  }

  private void checkOne() {
    long wishes =
        Stream.of(show, text, copy, add, change, remove, rinse).filter(Objects::nonNull).count();
    if (wishes > 1) {
      throw new BadValueException(
          "wish",
          "several at once",
          "choose one of --show, --text, --copy, --add, --change, --remove, --rinse");
    }
    if (copy == null && (as != null || name != null)) {
      throw new BadValueException("--as and --name", "alone", "they belong to --copy");
    }
    if (copy != null && as == null && name == null) {
      throw new BadValueException(
          "short name of the copy", "", "say --as, for example --as my-tank");
    }
  }

  private static ProcessDraft draft(Path file) {
    try {
      return ProcessText.parse(Files.readString(file));
    } catch (CharacterCodingException notText) {
      throw new BadValueException("file", file.toString(), "it must be text in UTF-8");
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String said(@Nullable String word) {
    return word == null ? "" : word;
  }

  @Override
  void print(ProcessesView view, PrintWriter out) {
    if (view.text() != null) {
      out.print(view.text());
      return;
    }
    for (ProcessView process : view.processes()) {
      out.println(
          process.process()
              + "  "
              + process.name()
              + (process.builtIn() ? "" : "  (your own)")
              + "  "
              + process.standing());
      if (view.processes().size() == 1) {
        process.steps().forEach(step -> print(step, out));
        OrderWarnings.print(
            process.warnings(), "  ", "wetside processes --rinse " + process.process(), out);
      }
    }
  }

  private static void print(ProcessStepView step, PrintWriter out) {
    Double seconds = step.seconds();
    String time =
        seconds == null ? "the load's" : TimeWords.clock(TimeSpan.ofSeconds(seconds.doubleValue()));
    out.println(
        "  "
            + " ".repeat(Math.max(0, 10 - time.length()))
            + time
            + "  "
            + step.kind()
            + (step.bottle() == null ? "" : " " + step.bottle())
            + "  "
            + step.agitation()
            + around(step)
            + "  ("
            + step.standing()
            + ", "
            + step.source()
            + ")");
  }

  /** How warm, when it is drained, where the liquid goes. */
  private static String around(ProcessStepView step) {
    StringBuilder words = new StringBuilder();
    if (step.lowC() != null) {
      words.append("; ").append(step.lowC()).append(" to ").append(step.highC()).append(" °C");
    }
    if (step.drainLeadSeconds() > 0) {
      words.append("; drained ").append(step.drainLeadSeconds()).append(" s before its end");
    }
    if (step.light().equals("required")) {
      return words.append("; in the light").toString();
    }
    return words
        .append(step.backTo() == null ? "; discarded" : "; back to " + step.backTo())
        .toString();
  }
}
