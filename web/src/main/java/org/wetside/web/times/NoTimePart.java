package org.wetside.web.times;

import java.util.List;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.ClipTestPlan;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.quantity.Units;

/**
 * The part of the page where there is no honest time.
 *
 * @param reasons why, most telling first
 * @param help what would help
 * @param nearest the nearest entries
 * @param clips the pieces of a clip test with their times; empty when no middle is known
 * @param frames frames to cut in all
 * @param framesPerClip frames on each piece
 * @param middle where the middle of the times comes from
 */
public record NoTimePart(
    List<String> reasons,
    List<String> help,
    List<String> nearest,
    List<String> clips,
    int frames,
    int framesPerClip,
    String middle) {
  static NoTimePart of(TimeAnswer.NoHonestTime none, Units units) {
    ClipTestPlan plan = none.plan();
    return new NoTimePart(
        none.reasons().stream()
            .map(reason -> TimeWords.of(reason, units))
            .distinct()
            .limit(3)
            .toList(),
        TimeWords.help(none, units).stream().filter(line -> line.startsWith("Bring")).toList(),
        none.nearest().stream().map(TimeWords::of).toList(),
        plan.times().stream().map(TimeWords::clock).toList(),
        plan.frames(),
        plan.framesPerClip(),
        plan.middle());
  }
}
