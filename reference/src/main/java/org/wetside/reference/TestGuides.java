package org.wetside.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.trial.StepMoment;
import org.wetside.core.trial.TrialGuide;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialStep;

/** How each test is made: the file of tests. */
public final class TestGuides {
  private final List<ReferenceRow> steps;

  private TestGuides(List<ReferenceRow> steps) {
    this.steps = steps;
  }

  /** Reads the file. */
  public static TestGuides open() {
    return new TestGuides(ReferenceTable.open("baths/test_steps").rows());
  }

  /** How that test is made. */
  public TrialGuide of(TrialKind kind) {
    return new TrialGuide(
        kind,
        steps.stream()
            .filter(row -> row.text("test").equals(kind.word()))
            .map(TestGuides::step)
            .toList());
  }

  private static TrialStep step(ReferenceRow row) {
    OptionalDouble seconds = row.maybeNumber("wait_s");
    return new TrialStep(
        (int) row.number("step"),
        StepMoment.fromWord(row.text("moment")),
        row.text("words"),
        seconds.isPresent()
            ? Optional.of(TimeSpan.ofSeconds(seconds.getAsDouble()))
            : Optional.empty(),
        Arrays.stream(row.text("handles").split("\\|", -1))
            .filter(name -> !name.isBlank())
            .toList(),
        row.standing(),
        row.citation(),
        row.note());
  }
}
