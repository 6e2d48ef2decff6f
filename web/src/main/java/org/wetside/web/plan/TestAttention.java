package org.wetside.web.plan;

import java.util.ArrayList;
import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.JudgeBottles;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Verdict;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;

/** Tests that run, and bottles to be tested before film is trusted to them. */
final class TestAttention {
  private static final String PATH = "/bench/test/";

  private final Wetside wetside;

  TestAttention(Wetside wetside) {
    this.wetside = wetside;
  }

  List<PlanPage.Attention> all() {
    List<PlanPage.Attention> attention = new ArrayList<>();
    for (Trial trial : wetside.bathTests().findTests().running()) {
      attention.add(
          new PlanPage.Attention(
              "A test runs",
              false,
              trial.kind().title() + ": its clock has not been stopped.",
              PATH + (trial.kind().ofFilm() ? "film" : trial.bottle()),
              "To the test"));
    }
    for (Bottle bottle : wetside.listBottles().all()) {
      if (isToBeTested(bottle)) {
        attention.add(
            new PlanPage.Attention(
                "Test first",
                false,
                "Bottle " + bottle.label().letter() + ", " + bottle.label().contents() + ".",
                PATH + bottle.label().letter(),
                "Test bottle " + bottle.label().letter()));
      }
    }
    return attention;
  }

  private boolean isToBeTested(Bottle bottle) {
    return bottle.label().role() != BottleRole.CONCENTRATE
        && !TrialKind.of(bottle.label().bath()).isEmpty()
        && JudgeBottles.verdict(bottle, wetside.clock()).kind() == Verdict.Kind.TEST_FIRST;
  }
}
