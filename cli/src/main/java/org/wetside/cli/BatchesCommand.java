package org.wetside.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.formula.HowTo;
import org.wetside.app.formula.MixBatch;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.formula.BatchBody;
import org.wetside.web.formula.BatchBottleBody;
import org.wetside.web.formula.BatchStepBody;
import org.wetside.web.formula.BatchStepView;
import org.wetside.web.formula.BatchView;
import org.wetside.web.formula.BatchesView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside batches}: what is mixed from formulas, ticked off step by step. */
@Command(
    name = "batches",
    description = "List the batches, begin one, tick off what really went in, bottle it.")
final class BatchesCommand extends HomeCommand<BatchesView> {
  private static final String ALL = "/api/batches";
  private static final String JSON = "application/json";

  @Parameters(arity = "0..1", paramLabel = "BATCH", description = "number of one batch")
  @Nullable String batch;

  @Option(names = "--begin", paramLabel = "FORMULA", description = "begin a batch of it")
  @Nullable String begin;

  @Option(names = "--make", paramLabel = "VOLUME", description = "wanted, for example 700mL")
  @Nullable String make;

  @Option(
      names = "--have",
      paramLabel = "SUBSTANCE",
      description = "in the cupboard in place of an ingredient; once for each")
  List<String> have = new ArrayList<>();

  @Option(names = "--balance", paramLabel = "STEP", description = "the smallest step it shows")
  @Nullable String balance;

  @Option(names = "--done", paramLabel = "STEP", description = "a step is done; with --amount")
  @Nullable String done;

  @Option(names = "--amount", paramLabel = "AMOUNT", description = "what really went in")
  @Nullable String amount;

  @Option(names = "--undone", paramLabel = "STEP", description = "a step was not done after all")
  @Nullable String undone;

  @Option(names = "--bottle", paramLabel = "LETTER", description = "it went into that bottle")
  @Nullable String bottle;

  @Override
  boolean writes() {
    return acts() > 0;
  }

  private long acts() {
    return Stream.of(begin, done, undone, bottle).filter(Objects::nonNull).count();
  }

  @Override
  BatchesView answerHere(Wetside wetside) {
    check();
    MixBatch mix = wetside.mixBatch();
    if (begin != null) {
      return one(mix.begin(body().query().question(begin)));
    }
    String asked = batch;
    if (asked == null) {
      return new BatchesView(mix.all().stream().map(BatchView::of).toList());
    }
    long id = number("batch", asked);
    Batch known =
        mix.find(id)
            .orElseThrow(() -> new BadValueException("batch", asked, "there is no such batch"));
    if (done != null) {
      return one(mix.done(id, (int) number("step", done), String.valueOf(amount)));
    }
    if (undone != null) {
      return one(mix.undone(id, (int) number("step", undone)));
    }
    return one(bottle == null ? known : mix.fill(id, bottle));
  }

  @Override
  ServerRequest request() {
    check();
    if (begin != null) {
      return ServerRequest.post(ALL, JSON, JsonText.of(body())).with("as", "list");
    }
    if (batch == null) {
      return ServerRequest.get(ALL);
    }
    String one = ALL + "/" + number("batch", batch);
    ServerRequest request = ServerRequest.get(one);
    if (done != null) {
      String body = JsonText.of(new BatchStepBody(String.valueOf(amount)));
      request = new ServerRequest("PUT", one + "/steps/" + number("step", done), JSON, body);
    } else if (undone != null) {
      request = new ServerRequest("DELETE", one + "/steps/" + number("step", undone), "", "");
    } else if (bottle != null) {
      String body = JsonText.of(new BatchBottleBody(bottle));
      request = new ServerRequest("PUT", one + "/bottle", JSON, body);
    }
    return request.with("as", "list");
  }

  private void check() {
    if (acts() > 1) {
      throw new BadValueException(
          "change of a batch", "several at once", "choose --begin, --done, --undone or --bottle");
    }
    if (batch == null && acts() > 0 && begin == null) {
      throw new BadValueException("batch", "", "say its number, for example 3");
    }
    if ((done == null) != (amount == null)) {
      throw new BadValueException(
          "step that is done", "half of it", "--done says which, --amount what really went in");
    }
  }

  private BatchBody body() {
    return new BatchBody(
        String.valueOf(begin), make, have.isEmpty() ? null : String.join(";", have), balance, null);
  }

  private static long number(String thing, String text) {
    if (!text.strip().matches("\\d{1,9}")) {
      throw new BadValueException(thing, text, "a whole number, for example 3");
    }
    return Long.parseLong(text.strip());
  }

  private static BatchesView one(Batch batch) {
    return new BatchesView(List.of(BatchView.of(batch)));
  }

  @Override
  Class<BatchesView> view() {
    return BatchesView.class;
  }

  @Override
  void print(BatchesView view, PrintWriter out) {
    if (view.batches().isEmpty()) {
      out.println("Nothing was mixed from a formula yet.");
    }
    for (BatchView one : view.batches()) {
      out.println(
          one.batch()
              + "  "
              + one.formula()
              + "  "
              + Metric.volume(one.madeMl())
              + "  begun "
              + one.begunAt()
              + (one.mixed() ? "  mixed" : "")
              + (one.bottle() == null ? "" : "  bottle " + one.bottle()));
      if (batch != null || begin != null) {
        one.cautions().forEach(caution -> out.println("  Caution: " + caution.text()));
        one.steps().forEach(step -> step(step, out));
      }
    }
  }

  private static void step(BatchStepView step, PrintWriter out) {
    boolean done = step.doneAt() != null;
    Double off = step.offPercent();
    out.println(
        "  "
            + (done ? "[x] " : "[ ] ")
            + step.step()
            + ". "
            + step.ingredient()
            + ": "
            + amount(step.grams(), step.volumeMl())
            + (done ? ", really " + amount(step.weighedGrams(), step.measuredMl()) : "")
            + (off == null ? "" : String.format(" (%+.1f %%)", off)));
    if (!done) {
      if (!step.how().isEmpty()) {
        out.println("       " + step.how() + ".");
      }
      step.cautions().forEach(caution -> out.println("       Caution: " + caution.text()));
    }
  }

  private static String amount(@Nullable Double grams, @Nullable Double millilitres) {
    if (grams != null) {
      return HowTo.grams(grams);
    }
    return millilitres == null ? "" : Metric.volume(millilitres);
  }
}
