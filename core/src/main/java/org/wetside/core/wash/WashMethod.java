package org.wetside.core.wash;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.FlowRate;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A way to wash by name, as a source prints it.
 *
 * @param slug short name used in commands
 * @param name as people call it
 * @param parts its baths in order; at least one
 * @param completeChange the time in which running water changes the whole tank; empty when no part
 *     of it runs
 * @param citation where it is printed
 * @param standing how it is known
 */
public record WashMethod(
    String slug,
    String name,
    List<Part> parts,
    Optional<Duration> completeChange,
    Citation citation,
    Standing standing) {

  /**
   * One bath of it.
   *
   * @param time from tank full to the next pour
   * @param runs whether water runs through meanwhile
   * @param aid whether it is a wash aid; the model reckons it as plain water
   */
  public record Part(Duration time, boolean runs, boolean aid) {}

  public WashMethod {
    parts = List.copyOf(parts);
    if (parts.stream().anyMatch(Part::runs) && completeChange.isEmpty()) {
      throw new BadValueException("running wash", slug, "it must say how fast its water runs");
    }
  }

  /** Whether a wash aid is part of it: then the forecast says less than the method does. */
  public boolean hasAid() {
    return parts.stream().anyMatch(Part::aid);
  }

  /** Whether water runs in it. */
  public boolean runs() {
    return completeChange.isPresent();
  }

  /**
   * As changes of water in a tank of that fill.
   *
   * @param flow of the running water; empty takes what changes the tank in the printed time
   */
  public List<WaterChange> changes(Volume fill, Optional<FlowRate> flow) {
    FlowRate running =
        flow.orElseGet(
            () -> completeChange.map(time -> FlowRate.of(fill, time)).orElse(FlowRate.NONE));
    return parts.stream()
        .map(part -> new WaterChange(fill, part.time(), part.runs() ? running : FlowRate.NONE))
        .toList();
  }
}
