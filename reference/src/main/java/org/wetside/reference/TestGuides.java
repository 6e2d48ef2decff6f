package org.wetside.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.trial.ClearingLimits;
import org.wetside.core.trial.StepMoment;
import org.wetside.core.trial.TrialGuide;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialStep;

/** How each test is made, and what a clearing time is compared by: the files of tests. */
public final class TestGuides {
  private final List<ReferenceRow> steps;
  private final List<ReferenceRow> limits;

  private TestGuides(List<ReferenceRow> steps, List<ReferenceRow> limits) {
    this.steps = steps;
    this.limits = limits;
  }

  /** Reads the files. */
  public static TestGuides open() {
    return new TestGuides(
        ReferenceTable.open("baths/test_steps").rows(),
        ReferenceTable.open("baths/test_limits").rows());
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

  /** When a fixer is spent by its clearing time, and when two times may be compared. */
  public ClearingLimits clearing() {
    ReferenceRow spent = limit("spent from");
    return new ClearingLimits(
        spent.number("least"),
        spent.citation(),
        spent.standing(),
        TemperatureDifference.ofKelvins(limit("comparable within").number("least")));
  }

  private ReferenceRow limit(String what) {
    return limits.stream()
        .filter(row -> row.text("test").equals(TrialKind.CLEARING.word()))
        .filter(row -> row.text("what").equals(what))
        .findFirst()
        .orElseThrow();
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
