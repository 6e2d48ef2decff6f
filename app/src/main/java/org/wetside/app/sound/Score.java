package org.wetside.app.sound;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wetside.core.process.Cue;
import org.wetside.core.process.Sounds;
import org.wetside.reference.SpokenWords;

/**
 * What is to be heard and when, from cues: their tones, the ticks before them, the words after
 * them, and the tick that says the sound is alive. The page does the same in {@code
 * static/bench/score.js}, so that both sound alike.
 */
final class Score {
  private static final long TICK_APART = 1000;
  private static final long CLEAR_OF_CUES = 1500;
  private static final long CLEAR_BEFORE_NEXT = 30;

  private final List<Cue> cues;
  private final long[] at;
  private final Voice voice;
  private final List<String> otherTanks;

  /**
   * @param cues in order
   * @param firstPour from which they count
   * @param voice says their words
   * @param otherTanks at work beside theirs
   */
  Score(List<Cue> cues, Instant firstPour, Voice voice, List<String> otherTanks) {
    this.voice = voice;
    this.otherTanks = List.copyOf(otherTanks);
    this.cues = List.copyOf(cues);
    at = cues.stream().mapToLong(cue -> firstPour.plus(cue.at()).toEpochMilli()).toArray();
  }

  /** When the last cue begins, ms since the epoch. */
  long last() {
    return at[at.length - 1];
  }

  /**
   * All that begins at that moment or later, in order.
   *
   * @param alive whether the tick comes that says the sound is alive
   */
  List<Sounding> from(long moment, boolean alive) {
    List<Sounding> score = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      addCue(i, score);
    }
    if (alive) {
      addAlive(moment, score);
    }
    return score.stream()
        .filter(one -> one.at() >= moment)
        .sorted(Comparator.comparingLong(Sounding::at))
        .toList();
  }

  private void addCue(int index, List<Sounding> score) {
    Cue cue = cues.get(index);
    for (int tick = cue.countIn(); tick > 0; tick--) {
      score.add(Sounding.tick(at[index] - tick * TICK_APART, Sounds.COUNT_IN, Sounds.SOFT));
    }
    long words = at[index] + cue.tone().milliseconds() + Sounds.WORDS_AFTER_MILLISECONDS;
    List<String> clips = SpokenWords.english().say(cue.saying(), otherTanks).clips();
    long spoken = clips.stream().mapToLong(voice::milliseconds).sum();
    long until = index + 1 < at.length ? at[index + 1] - CLEAR_BEFORE_NEXT : Long.MAX_VALUE;
    long end = Math.max(at[index] + cue.tone().milliseconds(), Math.min(words + spoken, until));
    score.add(new Sounding(at[index], cue.tone(), Sounds.LOUD, clips, words, end));
  }

  private void addAlive(long moment, List<Sounding> score) {
    long every = Sounds.ALIVE_EVERY_SECONDS * 1000L;
    for (long tick = -Math.floorDiv(-moment, every) * every; tick <= last(); tick += every) {
      if (isFree(tick)) {
        score.add(Sounding.tick(tick, Sounds.ALIVE, Sounds.SOFT));
      }
    }
  }

  private boolean isFree(long tick) {
    for (int i = 0; i < at.length; i++) {
      long before = at[i] - cues.get(i).countIn() * TICK_APART - CLEAR_OF_CUES;
      if (tick >= before && tick <= at[i] + CLEAR_OF_CUES) {
        return false;
      }
    }
    return true;
  }
}
