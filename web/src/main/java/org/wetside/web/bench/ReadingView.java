package org.wetside.web.bench;

import java.util.ArrayList;
import java.util.List;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;

/** A temperature as read and as corrected. */
public record ReadingView(
    String event,
    String at,
    int step,
    String thermometer,
    double rawC,
    double correctedC,
    boolean beforePour) {

  static List<ReadingView> all(BenchSnapshot at) {
    List<ReadingView> readings = new ArrayList<>();
    for (RunEvent event : at.state().applied()) {
      if (event.what() instanceof Happening.ReadingTaken reading) {
        readings.add(
            new ReadingView(
                event.id(),
                Instants.text(event.occurredAt()),
                event.step(),
                reading.thermometer(),
                reading.raw().celsius(),
                reading.corrected().celsius(),
                event.occurredAt().isBefore(at.moments().steps().get(event.step()).begin())));
      }
    }
    return readings;
  }
}
