package org.wetside.core.development;

import java.time.Duration;
import java.util.List;

/**
 * How to find a time with a piece of the film itself.
 *
 * @param clips how many pieces to cut from the end of a test roll
 * @param framesPerClip frames on each piece
 * @param times one time for each clip, shortest first; empty when nothing is known that a middle
 *     could be taken from
 * @param middle where the middle of the times comes from, in words
 */
public record ClipTestPlan(int clips, int framesPerClip, List<Duration> times, String middle) {
  public ClipTestPlan {
    times = List.copyOf(times);
  }

  /** Frames in all. */
  public int frames() {
    return clips * framesPerClip;
  }
}
