package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.learning.JudgeRoll;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.learning.DensityText;
import org.wetside.web.learning.JudgeBody;
import org.wetside.web.learning.JudgementView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside judge TM-01 --edge "as usual" --shadows good --contrast "a little flat"}. */
@Command(
    name = "judge",
    description = {
      "Judge the negatives of a roll, the edge print first; say what it alone teaches.",
      "By words, or by the densities of the reference pair, or both."
    })
final class JudgeCommand extends HomeCommand<JudgementView> {
  @Parameters(index = "0", paramLabel = "ROLL", description = "its number")
  String roll = "";

  @Option(
      names = "--edge",
      paramLabel = "WORDS",
      description = "edge print: thinner than usual, as usual, heavier than usual")
  @Nullable String edge;

  @Option(names = "--shadows", paramLabel = "WORD", description = "empty, weak, good or heavy")
  @Nullable String shadows;

  @Option(
      names = "--contrast",
      paramLabel = "WORDS",
      description = "flat, a little flat, right, a little hard or hard")
  @Nullable String contrast;

  @Option(names = "--clear", paramLabel = "D", description = "density of clear film")
  @Nullable String clear;

  @Option(names = "--dark", paramLabel = "D", description = "density of the frame 4 stops under")
  @Nullable String dark;

  @Option(names = "--light", paramLabel = "D", description = "density of the frame 2 stops over")
  @Nullable String light;

  @Option(names = "--water", paramLabel = "WORDS", description = "the water that was used")
  @Nullable String water;

  @Option(
      names = "--thermometer",
      paramLabel = "WORDS",
      description = "the thermometer; as recorded when nothing is said of what was used")
  @Nullable String thermometer;

  @Option(names = "--batch", paramLabel = "WORDS", description = "the bottle and its batch")
  @Nullable String batch;

  @Option(names = "--take-back", description = "the judgement counts no more")
  boolean back;

  @Override
  boolean writes() {
    return true;
  }

  @Override
  JudgementView answerHere(Wetside wetside) {
    checkOne();
    JudgeRoll judge = wetside.learning().judgeRoll();
    return JudgementView.of(
        back ? judge.takeBack(roll) : judge.judge(roll, body().seen(), body().used()));
  }

  @Override
  ServerRequest request() {
    checkOne();
    String path = "/api/rolls/" + ServerRequest.inPath(roll) + "/judgement";
    return back
        ? new ServerRequest("DELETE", path, "", "")
        : new ServerRequest("PUT", path, "application/json", JsonText.of(body()));
  }

  private void checkOne() {
    JudgeBody nothing = new JudgeBody(null, null, null, null, null, null, null, null, null);
    if (back && !body().equals(nothing)) {
      throw new BadValueException("wish", "--take-back", "it stands alone");
    }
  }

  private JudgeBody body() {
    return new JudgeBody(
        edge,
        shadows,
        contrast,
        density("base plus fog", clear),
        density("density four stops under", dark),
        density("density two stops over", light),
        water,
        thermometer,
        batch);
  }

  private static @Nullable Double density(String thing, @Nullable String typed) {
    return typed == null ? null : (Double) DensityText.parse(thing, typed);
  }

  @Override
  Class<JudgementView> view() {
    return JudgementView.class;
  }

  @Override
  void print(JudgementView view, PrintWriter out) {
    out.println(
        (back ? "taken back: " : "judged: ")
            + view.roll()
            + ", "
            + view.film()
            + " in "
            + view.developer());
    out.println(
        "  time: "
            + (view.factor() == null
                ? ""
                : String.format(Locale.ROOT, "%+.0f %%, ", 100 * (view.factor() - 1)))
            + view.factorWords());
    out.println(
        "  index: "
            + (view.indexStops() == null
                ? ""
                : String.format(Locale.ROOT, "%+.1f stops, ", view.indexStops()))
            + view.indexWords());
  }
}
