package org.wetside.web.bench;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.process.Cue;
import org.wetside.core.process.Speech;
import org.wetside.core.process.Tone;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;
import org.wetside.reference.SpokenWords;

/** A cue at its moment; see docs/bench-snapshot.md. */
public record CueView(
    String id,
    String at,
    double atSeconds,
    double stepSeconds,
    int step,
    String act,
    int count,
    double seconds,
    String text,
    String speech,
    List<String> clips,
    List<Tone.Note> tone,
    int countIn,
    SignalView signal,
    boolean missed) {

  /** What the whole screen does. */
  public record SignalView(boolean flash, int milliseconds, List<Integer> vibrateMilliseconds) {}

  static List<CueView> all(BenchSnapshot at) {
    Set<String> missed = missed(at);
    return at.cues().stream().map(cue -> of(at, cue, missed.contains(cue.id()))).toList();
  }

  /** The ids of the cues nobody was told of. */
  static Set<String> missed(BenchSnapshot at) {
    Set<String> missed = new HashSet<>();
    for (RunEvent event : at.state().events()) {
      if (event.what() instanceof Happening.CueMissed gone) {
        missed.add(gone.cue());
      }
    }
    return missed;
  }

  private static CueView of(BenchSnapshot at, Cue cue, boolean missed) {
    Speech speech = SpokenWords.english().say(cue.saying(), at.otherTanks());
    return new CueView(
        cue.id(),
        Instants.text(at.at(cue)),
        TimeSpan.toSeconds(cue.at()),
        TimeSpan.toSeconds(cue.inStep()),
        cue.step(),
        cue.act().word(),
        cue.count(),
        TimeSpan.toSeconds(cue.length()),
        cue.text(),
        speech.text(),
        speech.clips(),
        cue.tone().notes(),
        cue.countIn(),
        new SignalView(
            cue.signal().flash(), cue.signal().milliseconds(), cue.signal().vibrateMilliseconds()),
        missed);
  }
}
