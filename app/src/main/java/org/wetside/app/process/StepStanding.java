package org.wetside.app.process;

import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Standing;

/**
 * How the values of a typed step are known. A step that stands so in a known process keeps its
 * standing and source. A changed one is no longer what its source says: with a source of the
 * person's own it counts as published there, else as from memory.
 */
final class StepStanding {
  private static final String CHANGED = "changed from: ";

  /** Half of a tenth of a degree Fahrenheit, and what counting adds to it. */
  private static final TemperatureDifference ROUNDED = TemperatureDifference.ofKelvins(0.03);

  private final List<Step> cited;
  private final List<Step> kept;

  /**
   * @param cited steps of the built-in processes
   * @param kept steps of the process as it was kept before; empty for a new one
   */
  StepStanding(List<Step> cited, List<Step> kept) {
    this.cited = cited;
    this.kept = kept;
  }

  Step of(Step typed) {
    for (Step step : kept) {
      if (saysTheSame(step, typed)) {
        return known(typed, step.band(), step.standing(), step.source());
      }
    }
    for (Step step : cited) {
      if (saysTheSame(step, typed)) {
        return known(typed, step.band(), step.standing(), step.source());
      }
    }
    String source = typed.source();
    if (source.equals(StepDraft.UNSOURCED) || source.startsWith(CHANGED)) {
      return known(typed, typed.band(), Standing.FROM_MEMORY, source);
    }
    boolean borrowed = cited.stream().anyMatch(step -> step.source().equals(source));
    return borrowed
        ? known(typed, typed.band(), Standing.FROM_MEMORY, CHANGED + source)
        : known(typed, typed.band(), Standing.PUBLISHED, source);
  }

  /** In all that a source is cited for; hands and bottles are the person's own. */
  private static boolean saysTheSame(Step known, Step typed) {
    return known.source().equals(typed.source())
        && known.kind() == typed.kind()
        && known.duration().equals(typed.duration())
        && known.agitation().equals(typed.agitation())
        && sameBand(known.band(), typed.band())
        && known.light() == typed.light();
  }

  /** Read and typed in the other scale it is rounded to a tenth of a degree, and still the same. */
  private static boolean sameBand(
      Optional<TemperatureRange> known, Optional<TemperatureRange> typed) {
    if (known.isEmpty() || typed.isEmpty()) {
      return known.equals(typed);
    }
    return near(known.get().low(), typed.get().low())
        && near(known.get().high(), typed.get().high());
  }

  private static boolean near(Temperature one, Temperature other) {
    return one.minus(other).abs().compareTo(ROUNDED) <= 0;
  }

  private static Step known(
      Step typed, Optional<TemperatureRange> band, Standing standing, String source) {
    return new Step(
        typed.kind(),
        typed.bottle(),
        typed.duration(),
        typed.pourIn(),
        typed.drainLead(),
        typed.agitation(),
        band,
        typed.afterUse(),
        typed.light(),
        typed.lengthenTo(),
        standing,
        source);
  }
}
