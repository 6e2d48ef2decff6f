package org.wetside.acceptance.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wetside.core.process.Tone;

/** Hears acts in samples, by pitch and rhythm alone, and when each began. */
final class Ear {
  private static final double LIKE_ENOUGH = 0.85;
  private static final int UNSURE_MS = 18;
  private static final int SILENT_AFTER_MS = 90;
  private static final int LOOK_BACK_MS = 25;
  private static final double AUDIBLE = 0.02;

  private final Map<String, Tone> known;

  /**
   * @param known the pattern of each act, by its word: what a person has learned
   */
  Ear(Map<String, Tone> known) {
    this.known = Map.copyOf(known);
  }

  /**
   * An act that was heard.
   *
   * @param milliseconds from the first sample to its beginning
   * @param act its word
   */
  record Heard(double milliseconds, String act) {}

  List<Heard> listen(short[] samples, int rate) {
    int[] pitches = Pitches.of(samples, rate);
    List<Heard> heard = new ArrayList<>();
    for (int i = 1; i < pitches.length; i++) {
      if (pitches[i] > 0 && pitches[i - 1] == 0) {
        double onset = onset(samples, rate, i);
        String act = best(pitches, onset);
        if (!act.isEmpty()) {
          heard.add(new Heard(onset, act));
          i = step(onset + pattern(act).milliseconds()) + 1;
        }
      }
    }
    return heard;
  }

  private static double onset(short[] samples, int rate, int step) {
    int around = step * (rate / Pitches.STEP_SAMPLES_PER_SECOND);
    int at = Math.max(0, around - rate * LOOK_BACK_MS / 1000);
    while (at < samples.length && Math.abs(samples[at]) < AUDIBLE * 32_767) {
      at++;
    }
    return at * 1000.0 / rate;
  }

  private String best(int[] pitches, double onset) {
    String best = "";
    double most = LIKE_ENOUGH;
    for (Map.Entry<String, Tone> one : known.entrySet()) {
      double like = like(pitches, onset, one.getValue());
      if (like > most) {
        most = like;
        best = one.getKey();
      }
    }
    return best;
  }

  /** The share of moments, away from the edges of notes, at which the pitch is as it should be. */
  private static double like(int[] pitches, double onset, Tone tone) {
    int right = 0;
    int all = 0;
    double begin = onset;
    List<Tone.Note> notes = new ArrayList<>(tone.notes());
    notes.add(new Tone.Note(0, SILENT_AFTER_MS));
    for (Tone.Note note : notes) {
      double end = begin + note.milliseconds();
      for (int i = step(begin + UNSURE_MS); i <= step(end - UNSURE_MS); i++) {
        all++;
        right += i < pitches.length && pitches[i] != note.hertz() ? 0 : 1;
      }
      begin = end;
    }
    return right / (double) all;
  }

  private static int step(double milliseconds) {
    return (int) Math.round(milliseconds * Pitches.STEP_SAMPLES_PER_SECOND / 1000);
  }

  private Tone pattern(String act) {
    Tone tone = known.get(act);
    if (tone == null) {
      throw new IllegalArgumentException(act);
    }
    return tone;
  }
}
