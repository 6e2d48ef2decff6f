package org.wetside.web.process;

import java.util.List;
import org.wetside.app.process.ShowCues;
import org.wetside.core.process.Cue;
import org.wetside.core.process.Tone;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.reference.SpokenWords;

/** The cues of a process, as JSON and on the command line. */
public record CuesView(String process, String name, double totalSeconds, List<CueLineView> cues) {
  /**
   * One cue.
   *
   * @param atSeconds from the beginning of the first pour; negative before it
   * @param stepSeconds on the step's own clock
   * @param step index of the step
   * @param bath its word
   * @param act what is asked for
   * @param text for the eye
   * @param speech for the ear
   * @param tone for the ear, without words
   * @param signal for the eye, without words
   */
  public record CueLineView(
      double atSeconds,
      double stepSeconds,
      int step,
      String bath,
      String act,
      String text,
      String speech,
      List<NoteView> tone,
      SignalView signal) {}

  /** One note of a tone; 0 Hz is silence. */
  public record NoteView(int hertz, int milliseconds) {}

  /** What the whole screen and the hand get. */
  public record SignalView(boolean flash, int milliseconds, List<Integer> vibrateMilliseconds) {}

  /** The view of cues. */
  public static CuesView of(ShowCues.Cues shown) {
    return new CuesView(
        shown.process().slug(),
        shown.process().name(),
        TimeSpan.toSeconds(shown.steps().get(shown.steps().size() - 1).end()),
        shown.cues().stream().map(cue -> line(shown, cue)).toList());
  }

  private static CueLineView line(ShowCues.Cues shown, Cue cue) {
    return new CueLineView(
        TimeSpan.toSeconds(cue.at()),
        TimeSpan.toSeconds(cue.inStep()),
        cue.step(),
        shown.steps().get(cue.step()).step().kind().word(),
        cue.act().word(),
        cue.text(),
        SpokenWords.english().say(cue.saying()).text(),
        cue.tone().notes().stream().map(CuesView::note).toList(),
        new SignalView(
            cue.signal().flash(), cue.signal().milliseconds(), cue.signal().vibrateMilliseconds()));
  }

  private static NoteView note(Tone.Note note) {
    return new NoteView(note.hertz(), note.milliseconds());
  }
}
